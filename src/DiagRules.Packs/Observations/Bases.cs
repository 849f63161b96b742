using DiagRules.Model.Conditions;

namespace DiagRules.Packs.Observations;

/// <summary>The measured readings that a derived one rests on.</summary>
internal static class Bases
{
    /// <summary>Their ids, each once, in the order in which they first appear.</summary>
    public static IReadOnlyList<string> Of(Term term)
    {
        var ids = new List<string>();
        Collect(term, ids);
        return ids;
    }

    private static void Collect(Term term, List<string> ids)
    {
        switch (term)
        {
            case ReadingTerm { Reading.From: { } from }:
                Collect(from, ids);
                break;
            case ReadingTerm reading when !ids.Contains(reading.Reading.Id):
                ids.Add(reading.Reading.Id);
                break;
            case ArithmeticTerm arithmetic:
                Collect(arithmetic.Left, ids);
                Collect(arithmetic.Right, ids);
                break;
            case NegatedTerm negated:
                Collect(negated.Operand, ids);
                break;
            case CallTerm call:
                foreach (var argument in call.Arguments)
                {
                    Collect(argument, ids);
                }

                break;
        }
    }
}
