using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>
/// Reads how far a meter may be off: <c>0.5 % + 0.02 V</c>, <c>0.5 % + 2 digits</c> with a resolution, <c>4 bar</c>, <c>0.5 %</c>.
/// A percentage is always one of the reading, even where the reading itself is in percent.
/// </summary>
internal static class AccuracyReader
{
    private const string Digits = "digits";
    private const string Digit = "digit";

    /// <summary>The accuracy, or <see langword="null"/> after reporting.</summary>
    /// <param name="text">The text.</param>
    /// <param name="unit">Unit of the reading.</param>
    /// <param name="resolution">What one digit is worth, from <see cref="ReadResolution"/>; <see langword="null"/> when the pack does not say.</param>
    /// <param name="problems">Where problems go.</param>
    public static Accuracy? Read(PlacedText text, Unit unit, Quantity? resolution, ProblemSink problems)
    {
        var parts = Split(text);
        if (parts.Count > 2)
        {
            Report(text, ProblemCatalogue.NumberNotReadable,
                $"'{Excerpt.Of(text.Value)}' has more than two parts; " +
                $"an accuracy is a percentage, a fixed part, or both: '0.5 % + {Measure.Example(WidthOf(unit), "0.02")}'.",
                problems);
            return null;
        }

        double? relative = null;
        double? width = null;
        foreach (var part in parts)
        {
            var isRelative = part.Value.EndsWith('%');
            if ((isRelative ? relative : width) is not null)
            {
                Report(part, ProblemCatalogue.NumberNotReadable,
                    $"'{Excerpt.Of(part.Value)}' is a second part of the same kind; " +
                    "an accuracy is a percentage of the reading, a fixed part, or one of each.",
                    problems);
                return null;
            }

            var value = isRelative ? Relative(part, problems) : Fixed(part, unit, resolution, problems);
            if (value is null)
            {
                return null;
            }

            (relative, width) = isRelative ? (value, width) : (relative, value);
        }

        return new Accuracy(relative ?? 0, width ?? 0);
    }

    /// <summary>What one digit is worth: a difference in the reading's dimension, or <see langword="null"/> after reporting.</summary>
    public static Quantity? ReadResolution(PlacedText text, Unit unit, ProblemSink problems) =>
        QuantityReader.Read(text, problems) is { } step && IsPositive(text, step.Value, problems) && IsWidth(text, step, unit, problems) ? step : null;

    private static List<PlacedText> Split(PlacedText text)
    {
        var parts = new List<PlacedText>();
        var start = 0;
        for (var at = text.Value.IndexOf(" + ", StringComparison.Ordinal); at >= 0; at = text.Value.IndexOf(" + ", start, StringComparison.Ordinal))
        {
            parts.Add(text.Slice(start, at - start));
            start = at + 3;
        }

        parts.Add(text.Slice(start, text.Value.Length - start));
        return parts;
    }

    private static double? Relative(PlacedText part, ProblemSink problems) =>
        QuantityReader.Read(part, problems) is { } percentage && IsPositive(part, percentage.Value, problems) ? percentage.Si : null;

    private static double? Fixed(PlacedText part, Unit unit, Quantity? resolution, ProblemSink problems)
    {
        if (part.Value.EndsWith(" " + Digits, StringComparison.Ordinal) || part.Value.EndsWith(" " + Digit, StringComparison.Ordinal))
        {
            return FromDigits(part, resolution, unit, problems);
        }

        return QuantityReader.Read(part, problems) is { } width && IsPositive(part, width.Value, problems) && IsWidth(part, width, unit, problems)
            ? width.Unit.WidthToSi(width.Value)
            : null;
    }

    private static bool IsWidth(PlacedText part, Quantity width, Unit unit, ProblemSink problems)
    {
        if (!width.Unit.IsPoint || !unit.IsPoint)
        {
            return ExpectedType.IsMet(part, TermType.Of(width.Unit), WidthOf(unit), problems);
        }

        Report(part, ProblemCatalogue.TemperaturesMixed,
            $"'{Excerpt.Of(part.Value)}' is a temperature, and an accuracy is a difference of two; " +
            $"write '{width with { Unit = Kelvin }}'.",
            problems);
        return false;
    }

    private static double? FromDigits(PlacedText part, Quantity? resolution, Unit unit, ProblemSink problems)
    {
        if (NumberReader.Read(part.Slice(0, part.Value.LastIndexOf(' ')), problems) is not { } digits || !IsPositive(part, digits, problems))
        {
            return null;
        }

        if (resolution is { } step)
        {
            return digits * step.Unit.WidthToSi(step.Value);
        }

        Report(part, ProblemCatalogue.RequiredKeyMissing,
            $"'{Excerpt.Of(part.Value)}' counts in the last digit of the meter; " +
            $"say what one is worth, such as 'resolution: {Measure.Example(WidthOf(unit), "0.01")}'.",
            problems);
        return null;
    }

    private static bool IsPositive(PlacedText part, double value, ProblemSink problems)
    {
        if (value >= 0)
        {
            return true;
        }

        Report(part, ProblemCatalogue.NumberNotReadable,
            $"'{Excerpt.Of(part.Value)}' is below zero; " +
            $"an accuracy holds to both sides, so write '{Excerpt.Of(part.Value[1..])}'.",
            problems);
        return false;
    }

    private static Unit Kelvin => UnitTable.TryGet("K", out var kelvin) ? kelvin : Unit.Number;

    /// <summary>A width is a difference, so that of a temperature is in kelvin.</summary>
    private static TermType WidthOf(Unit unit) => unit.IsPoint ? TermType.Of(Kelvin) : TermType.Of(unit);

    private static void Report(PlacedText part, ProblemDescriptor descriptor, string message, ProblemSink problems) =>
        problems.Add(descriptor, part.At(0, part.Value.Length), message);
}
