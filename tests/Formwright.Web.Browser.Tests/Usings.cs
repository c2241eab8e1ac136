global using Xunit;

[assembly: AssemblyFixture(typeof(Formwright.Web.Browser.Tests.Browser))]
