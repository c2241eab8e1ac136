using System.Globalization;
using Formwright.Design.Reading;
using Formwright.Testing;
using Formwright.Words;
using Xunit;

namespace Formwright.Design.Tests;

public sealed class KeyTextTests
{
    private static readonly CultureInfo English = CultureInfo.InvariantCulture;
    private static readonly CultureInfo Spanish = CultureInfo.GetCultureInfo("es");

    [Fact]
    public void Every_key_and_group_is_explained_and_nothing_else_is()
    {
        IReadOnlyList<KeySpec> keys = DesignText.Keys();
        string[] expected =
        [
            .. keys.Select(spec => spec.DocKey)
                .Concat(keys.Select(spec => spec.GroupDocKey))
                .Distinct()
                .Order(StringComparer.Ordinal),
        ];
        foreach (CultureInfo culture in (CultureInfo[])[English, Spanish])
        {
            IEnumerable<string> found = DesignWords
                .Of.Keys(culture)
                .Where(key =>
                    key.StartsWith("key.", StringComparison.Ordinal)
                    || (key.StartsWith("group.", StringComparison.Ordinal) && !IsOuter(key))
                );
            Assert.Equal(expected, found.Order(StringComparer.Ordinal));
        }

        // A group that holds groups only, such as [wood], may be explained too.
        bool IsOuter(string key) =>
            !expected.Contains(key)
            && keys.Any(spec => spec.GroupDocKey.StartsWith(key + ".", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void An_explanation_is_a_sentence(string language)
    {
        using IDisposable spoken = Language.Use(language);
        foreach (KeySpec spec in DesignText.Keys())
        {
            Assert.True(spec.Text.EndsWith('.'), $"{spec.DocKey}: {spec.Text}");
            Assert.DoesNotContain('|', spec.Text);
            Assert.InRange(spec.Text.Length, 10, 400);
            Assert.True(spec.GroupText.EndsWith('.'), spec.GroupDocKey);
        }
    }

    [Fact]
    public void Keys_are_written_in_small_letters_and_stand_once()
    {
        IReadOnlyList<KeySpec> keys = DesignText.Keys();
        Assert.Equal(keys.Count, keys.Select(spec => spec.Path).Distinct().Count());
        Assert.All(
            keys,
            spec => Assert.Matches(@"^[a-z0-9_]+(\[\])?(\.[a-z0-9_]+(\[\])?)*$", spec.Path)
        );
    }

    [Fact]
    public void A_default_is_a_value_that_the_key_takes()
    {
        foreach (KeySpec spec in DesignText.Keys())
        {
            if (
                spec.Kind is KeyKind.Length or KeyKind.Number or KeyKind.Whole
                && !string.IsNullOrEmpty(spec.Default)
            )
            {
                double value = double.Parse(spec.Default, CultureInfo.InvariantCulture);
                Assert.True(value >= spec.Min && value <= spec.Max, spec.Path);
            }
        }
    }

    [Theory]
    [InlineData("en", "docs/reference/design-file.md")]
    [InlineData("es", "docs/reference/design-file.es.md")]
    public void The_reference_is_up_to_date(string language, string page)
    {
        using IDisposable spoken = Language.Use(language);
        Approved.CheckFile(Repository.PathOf(page), KeyReference.Markdown());
    }
}
