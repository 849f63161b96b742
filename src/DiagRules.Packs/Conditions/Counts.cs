using DiagRules.Model.Conditions;
using DiagRules.Model.Quantities;

namespace DiagRules.Packs.Conditions;

/// <summary>Tells counts from measured numbers: a ratio of two voltages has no unit either, but is no count.</summary>
internal static class Counts
{
    /// <summary>Whether a term is made of whole things: bare numbers, entries with <c>unit: number</c>, their sums and products.</summary>
    public static bool IsCount(Term term) => term.Type.Unit == Unit.Number.Symbol && term switch
    {
        LiteralTerm or ParameterTerm => true,
        ReadingTerm reading => reading.Reading.From is null ? reading.Reading.Accuracy is null : IsCount(reading.Reading.From),
        NegatedTerm negated => IsCount(negated.Operand),
        ArithmeticTerm arithmetic => arithmetic.Operator != '/' && IsCount(arithmetic.Left) && IsCount(arithmetic.Right),
        CallTerm call => call.Calculation is BuiltInCalculation { KeepsCounts: true } && call.Arguments.All(IsCount),
        _ => false,
    };
}
