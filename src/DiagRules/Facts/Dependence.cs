using DiagRules.Model;
using DiagRules.Model.Conditions;

namespace DiagRules.Facts;

/// <summary>What a term or condition looks at.</summary>
internal static class Dependence
{
    /// <summary>Readings named in a term, derived ones as themselves.</summary>
    public static IEnumerable<Reading> ReadingsIn(Term term) => term switch
    {
        ReadingTerm reading => [reading.Reading],
        ArithmeticTerm sum => ReadingsIn(sum.Left).Concat(ReadingsIn(sum.Right)),
        NegatedTerm negated => ReadingsIn(negated.Operand),
        CallTerm call => call.Arguments.SelectMany(ReadingsIn),
        _ => [],
    };

    /// <summary>Measured readings a condition rests on, by index, through derived ones too; repeats are possible.</summary>
    public static IEnumerable<int> MeasuredIn(Condition condition, Pack pack) => condition switch
    {
        AllOf all => all.Parts.SelectMany(part => MeasuredIn(part, pack)),
        AnyOf any => any.Parts.SelectMany(part => MeasuredIn(part, pack)),
        Negation negation => MeasuredIn(negation.Part, pack),
        Comparison comparison => comparison.Bases,
        KnownReading known => MeasuredBehind(pack.Readings[known.Reading]),
        _ => [],
    };

    /// <summary>Nodes of findings and causes a condition tests; repeats are possible.</summary>
    public static IEnumerable<int> NodesIn(Condition condition) => condition switch
    {
        AllOf all => all.Parts.SelectMany(NodesIn),
        AnyOf any => any.Parts.SelectMany(NodesIn),
        Negation negation => NodesIn(negation.Part),
        GradeTest test => [test.Node],
        KnownGrade known => [known.Node],
        _ => [],
    };

    /// <summary>Calls written in a term itself, inner ones before the call they are an argument of.</summary>
    public static IEnumerable<CallTerm> CallsIn(Term term) => term switch
    {
        ArithmeticTerm sum => CallsIn(sum.Left).Concat(CallsIn(sum.Right)),
        NegatedTerm negated => CallsIn(negated.Operand),
        CallTerm call => call.Arguments.SelectMany(CallsIn).Append(call),
        _ => [],
    };

    /// <summary>Calls written in a condition itself.</summary>
    public static IEnumerable<CallTerm> CallsIn(Condition condition) => condition switch
    {
        AllOf all => all.Parts.SelectMany(CallsIn),
        AnyOf any => any.Parts.SelectMany(CallsIn),
        Negation negation => CallsIn(negation.Part),
        Comparison comparison => CallsIn(comparison.Left).Concat(CallsIn(comparison.Right)),
        _ => [],
    };

    private static IEnumerable<int> MeasuredBehind(Reading reading) =>
        reading.From is null ? [reading.Index] : ReadingsIn(reading.From).SelectMany(MeasuredBehind);
}
