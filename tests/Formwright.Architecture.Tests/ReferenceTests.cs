using System.Xml.Linq;
using Xunit;

namespace Formwright.Architecture.Tests;

/// <summary>Data goes one way (docs/adr/0001): each project may refer to these and to no others.</summary>
public sealed class ReferenceTests
{
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Words"] = [],
        ["Findings"] = ["Words"],
        ["Design"] = ["Findings"],
        ["Curves"] = [],
        ["Fields"] = ["Curves"],
        ["Instrument"] = ["Curves", "Design", "Fields"],
        ["Jigs"] = ["Instrument"],
        ["Drawing"] = ["Curves", "Words"],
        ["Sheets"] = ["Drawing", "Jigs", "Trace"],
        ["Writers"] = ["Drawing"],
        ["Packs"] = ["Sheets", "Writers"],
        ["Trace"] = ["Curves", "Design"],
        ["Cli"] = ["Packs", "Trace", "Web"],
        ["Web"] = ["Packs", "Trace"],
    };

    [Fact]
    public void Every_project_refers_exactly_to_what_the_graph_allows()
    {
        foreach (string project in Sources.Projects)
        {
            Assert.True(Allowed.ContainsKey(project), $"{project} has no place in the graph");
            string[] found =
            [
                .. XDocument
                    .Load(Sources.ProjectFile(project))
                    .Descendants("ProjectReference")
                    .Select(each =>
                        Path.GetFileNameWithoutExtension(each.Attribute("Include")!.Value)[
                            "Formwright.".Length..
                        ]
                    )
                    .Order(StringComparer.Ordinal),
            ];
            Assert.True(
                Allowed[project].SequenceEqual(found),
                $"{project} refers to {string.Join(", ", found)}"
            );
        }
    }

    [Fact]
    public void The_graph_has_no_way_back()
    {
        foreach (string project in Allowed.Keys)
        {
            Assert.DoesNotContain(project, Reach(project));
        }

        static IEnumerable<string> Reach(string from) =>
            Allowed[from].Concat(Allowed[from].SelectMany(Reach));
    }

    [Fact]
    public void Pure_geometry_needs_no_package()
    {
        foreach (string project in (string[])["Words", "Findings", "Curves"])
        {
            Assert.Empty(
                XDocument.Load(Sources.ProjectFile(project)).Descendants("PackageReference")
            );
        }
    }

    [Fact]
    public void Versions_stand_in_one_place()
    {
        foreach (string project in Sources.Projects)
        {
            Assert.DoesNotContain(
                XDocument.Load(Sources.ProjectFile(project)).Descendants("PackageReference"),
                each => each.Attribute("Version") is not null
            );
        }
    }
}
