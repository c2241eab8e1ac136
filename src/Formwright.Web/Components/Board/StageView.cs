using System.Collections.Concurrent;
using Formwright.Drawing;

namespace Formwright.Web.Components.Board;

/// <summary>One thing that a stage shows: a view of a sheet, a chart, or what sheets say in words and tables.</summary>
/// <param name="name">What it is called among the others of its stage.</param>
/// <param name="draw">Draws it for a room of so many mm.</param>
internal sealed class StageView(string name, Func<Size, IReadOnlyList<ViewPicture>> draw)
{
    private readonly ConcurrentDictionary<Size, Lazy<IReadOnlyList<ViewPicture>>> drawn = [];

    public string Name { get; } = name;

    /// <summary>Words and tables: read by scrolling, not looked at whole.</summary>
    public bool IsText { get; init; }

    /// <summary>Its lines alone, for a small picture; null where it has none.</summary>
    public Lazy<SmallPicture?> Small { get; init; } = new((SmallPicture?)null);

    /// <summary>Drawn for a room of so many mm, letters at their own size; once for each size.</summary>
    public IReadOnlyList<ViewPicture> In(Size room) =>
        drawn.GetOrAdd(room, size => new(() => draw(size))).Value;

    /// <summary>Texts that follow one another are one.</summary>
    public static IReadOnlyList<StageView> Joined(IEnumerable<StageView> views)
    {
        List<StageView> joined = [];
        foreach (StageView view in views)
        {
            if (view.IsText && joined is [.., { IsText: true } last])
            {
                joined[^1] = new StageView(last.Name, room => [.. last.In(room), .. view.In(room)])
                {
                    IsText = true,
                };
            }
            else
            {
                joined.Add(view);
            }
        }

        return joined;
    }
}
