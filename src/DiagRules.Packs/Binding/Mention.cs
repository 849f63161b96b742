using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;

namespace DiagRules.Packs.Binding;

/// <summary>An entry that a condition looks at.</summary>
/// <param name="To">The entry.</param>
/// <param name="Place">Where.</param>
/// <param name="AsksUnknown">Whether it asks for <c>unknown</c>.</param>
internal readonly record struct Mention(Declared To, SourcePlace Place, bool AsksUnknown = false)
{
    /// <summary>Everything a condition looks at, derived readings as themselves.</summary>
    public static IEnumerable<Mention> In(Condition condition, Draft draft) => condition switch
    {
        AllOf all => all.Parts.SelectMany(part => In(part, draft)),
        AnyOf any => any.Parts.SelectMany(part => In(part, draft)),
        Negation negation => In(negation.Part, draft),
        GradeTest test => [new(draft.Node(test.Node), test.Place)],
        KnownGrade known => [new(draft.Node(known.Node), known.Place, !known.WantsKnown)],
        KnownReading known => [new(draft.Of(Section.Readings)[known.Reading], known.Place, !known.WantsKnown)],
        Comparison comparison => In(comparison.Left, draft).Concat(In(comparison.Right, draft)),
        _ => [],
    };

    /// <summary>Everything a term looks at.</summary>
    public static IEnumerable<Mention> In(Term term, Draft draft) => term switch
    {
        ReadingTerm reading => [new(draft.Of(Section.Readings)[reading.Reading.Index], reading.Place)],
        ParameterTerm parameter => [new(draft.Of(Section.Parameters)[parameter.Parameter], parameter.Place)],
        ArithmeticTerm arithmetic => In(arithmetic.Left, draft).Concat(In(arithmetic.Right, draft)),
        NegatedTerm negated => In(negated.Operand, draft),
        CallTerm call => call.Arguments.SelectMany(argument => In(argument, draft)),
        _ => [],
    };
}
