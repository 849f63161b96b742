using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>Checks that a value measures what its key wants.</summary>
internal static class ExpectedType
{
    /// <summary>Whether it does; reports it if not.</summary>
    public static bool IsMet(PlacedText text, TermType found, TermType expected, ProblemSink problems)
    {
        if (found.Dimension == expected.Dimension && found.IsPoint == expected.IsPoint)
        {
            return true;
        }

        var (descriptor, message) = Fault(Excerpt.Of(text.Value), found, expected);
        problems.Add(descriptor, text.At(0, text.Value.Length), message);
        return false;
    }

    private static (ProblemDescriptor Descriptor, string Message) Fault(string text, TermType found, TermType expected)
    {
        if (found.Dimension == expected.Dimension)
        {
            return (ProblemCatalogue.TemperaturesMixed, $"'{text}' is {Measure.Describe(found)}, and {Measure.Describe(expected)} is expected here.");
        }

        return found.Dimension.IsNone
            ? (ProblemCatalogue.UnitMissing, $"'{text}' has no unit; {Measure.Describe(expected)} is expected, such as '{Measure.Example(expected)}'.")
            : (ProblemCatalogue.UnitsDoNotMatch, $"'{text}' is {Measure.Describe(found)}, and {Measure.Describe(expected)} is expected, such as '{Measure.Example(expected)}'.");
    }
}
