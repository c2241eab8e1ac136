using System.Text.RegularExpressions;
using Xunit;

namespace Formwright.Architecture.Tests;

/// <summary>One public type per file, named after it, in the namespace of its folder; files of a size that a person reads.</summary>
public sealed partial class FileTests
{
    // 400 lines want a second look, which is a person's; no file that has had one needs more than this.
    private const int MostLines = 600;

    public static TheoryData<string> Projects() => [.. Sources.Projects];

    [Theory]
    [MemberData(nameof(Projects))]
    public void One_public_type_per_file_named_after_it(string project)
    {
        foreach (string path in Sources.Files(project))
        {
            // Chain.Moves.cs holds a part of Chain.
            string name = Path.GetFileName(path).Split('.')[0];
            string[] types =
            [
                .. PublicType()
                    .Matches(File.ReadAllText(path))
                    .Select(match => match.Groups["name"].Value),
            ];
            Assert.True(types.Length <= 1, $"{path} holds {string.Join(", ", types)}");
            Assert.True(
                types.Length == 0 || types[0] == name,
                $"{path} holds {types.FirstOrDefault()}"
            );
        }
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void Files_are_short_and_stand_in_the_namespace_of_their_project(string project)
    {
        foreach (string path in Sources.Files(project))
        {
            string text = File.ReadAllText(path);
            int lines = text.Count(c => c == '\n');
            Assert.True(lines <= MostLines, $"{path} has {lines} lines");
            if (Path.GetFileName(path) != "Program.cs")
            {
                Assert.Matches($@"(?m)^namespace Formwright\.{project}[.;]", text);
            }
        }
    }

    [GeneratedRegex(
        @"^public\s+(?:(?:static|sealed|abstract|partial|readonly|ref|unsafe)\s+)*(?:record\s+struct|record|class|struct|interface|enum|delegate\s+\S+)\s+(?<name>\w+)",
        RegexOptions.Multiline
    )]
    private static partial Regex PublicType();
}
