namespace Formwright.Web.Components.Parts;

/// <summary>
/// What a part of the page was drawn from last. While a hand drags, only what the drag changes is drawn anew: a part that shows nothing but the
/// study stays as it is until there is another.
/// </summary>
internal sealed class Drawn
{
    private object?[]? last;

    /// <summary>Whether anything that the part shows is another than last time; objects are told apart by themselves, not by what they hold.</summary>
    public bool IsOutdatedBy(params object?[] shown)
    {
        if (last is not null && last.Length == shown.Length && last.Zip(shown).All(IsSame))
        {
            return false;
        }

        last = shown;
        return true;
    }

    private static bool IsSame((object? Before, object? Now) pair) =>
        ReferenceEquals(pair.Before, pair.Now)
        || (pair.Now is string or ValueType && pair.Now.Equals(pair.Before));
}
