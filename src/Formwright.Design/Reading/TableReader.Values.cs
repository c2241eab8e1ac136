using Tomlyn.Syntax;

namespace Formwright.Design.Reading;

/// <content>Numbers and lists of numbers.</content>
public sealed partial class TableReader
{
    private IReadOnlyList<double> ReadList(
        string key,
        KeyKind kind,
        string unit,
        IReadOnlyList<double> whenAbsent,
        double min,
        double max
    )
    {
        string standard = $"[{string.Join(", ", whenAbsent.Select(value => Number(value)))}]";
        Declare(key, kind, unit, standard, min, max);
        ValueSyntax? value = ValueOf(key);
        if (value is null)
        {
            return whenAbsent;
        }

        bool mayBeEmpty = whenAbsent.Count == 0;
        if (
            value is not ArraySyntax array
            || array.Items.ChildrenCount > MostInList
            || (array.Items.ChildrenCount == 0 && !mayBeEmpty)
        )
        {
            Report(value.Span, key, "diagnostic.list", Told(key), MostInList);
            return whenAbsent;
        }

        KeyKind each = kind == KeyKind.Lengths ? KeyKind.Length : KeyKind.Number;
        return
        [
            .. array
                .Items.Select(item => item.Value)
                .OfType<ValueSyntax>()
                .Select(item => NumberOf(item, key, each, unit, min, max)),
        ];
    }

    private T Kept<T>(string key, T value)
    {
        context.Values[Join(path, key)] = value;
        return value;
    }

    // Null where the key is absent, NaN where it is faulty.
    private double? ReadNumber(string key, KeyKind kind, string unit, double min, double max)
    {
        if (ValueOf(key) is { } value)
        {
            return NumberOf(value, key, kind, unit, min, max);
        }

        return Has(key) ? double.NaN : null;
    }

    private double NumberOf(
        ValueSyntax syntax,
        string key,
        KeyKind kind,
        string unit,
        double min,
        double max
    )
    {
        double number;
        switch (syntax)
        {
            case IntegerValueSyntax whole:
                number = whole.Value;
                break;
            case FloatValueSyntax real when kind != KeyKind.Whole:
                number = real.Value;
                break;
            case StringValueSyntax { Value: { } text } when kind == KeyKind.Length:
                LengthFault fault = Design.Lengths.Read(text, out number);
                if (fault != LengthFault.None)
                {
                    string message =
                        fault == LengthFault.UnknownUnit
                            ? "diagnostic.unit"
                            : "diagnostic.length-text";
                    string shown = Shown.Of(text);
                    Report(syntax.Span, key, message, Told(key), shown, Design.Lengths.KnownUnits);
                    return double.NaN;
                }

                break;
            default:
                string wanted =
                    kind == KeyKind.Length ? "diagnostic.length"
                    : kind == KeyKind.Whole ? "diagnostic.whole"
                    : "diagnostic.number";
                Report(syntax.Span, key, wanted, Told(key));
                return double.NaN;
        }

        if (!double.IsFinite(number))
        {
            Report(syntax.Span, key, "diagnostic.not-finite", Told(key));
            return double.NaN;
        }

        if (number < min || number > max)
        {
            // A figure of 300 digits helps nobody.
            string space = unit.Length == 0 ? "" : " " + unit;
            if (Math.Abs(number) < 1e9)
            {
                Report(syntax.Span, key, "diagnostic.range", Told(key), number, min, max, space);
            }
            else
            {
                Report(syntax.Span, key, "diagnostic.range-far", Told(key), min, max, space);
            }

            return double.NaN;
        }

        return number;
    }

    private ValueSyntax? ValueOf(string key)
    {
        if (!table.Entries.TryGetValue(key, out TomlEntry? entry))
        {
            return null;
        }

        context.Places[Join(path, key)] = entry.Span;
        if (entry.Value is null)
        {
            Report(entry.Span, key, "diagnostic.value", Told(key));
        }

        return entry.Value;
    }
}
