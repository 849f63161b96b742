using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Packs.Binding;

namespace DiagRules.Packs.Checks;

/// <summary>A condition and where it is used.</summary>
/// <param name="Owner">The entry.</param>
/// <param name="Condition">The condition.</param>
internal readonly record struct ConditionUse(Declared Owner, Condition Condition)
{
    /// <summary>Every condition of a pack, section by section.</summary>
    public static IEnumerable<ConditionUse> In(CheckScope scope)
    {
        foreach (var (declared, finding) in scope.Of<Finding>(Section.Findings))
        {
            foreach (var read in finding.Reads)
            {
                yield return new(declared, read.When);
            }

            if (finding.Bands?.If is { } condition)
            {
                yield return new(declared, condition);
            }
        }

        foreach (var (declared, cause) in scope.Of<Cause>(Section.Preconditions))
        {
            yield return new(declared, cause.Precondition!.Must);
        }

        foreach (var (declared, rule) in scope.Of<Rule>(Section.Rules))
        {
            yield return new(declared, rule.When);
        }

        foreach (var (declared, check) in scope.Of<Check>(Section.Checks).Where(check => check.Entry.SkipIf is not null))
        {
            yield return new(declared, check.SkipIf!);
        }
    }

    /// <summary>The comparisons in a condition.</summary>
    public static IEnumerable<Comparison> Comparisons(Condition condition) => condition switch
    {
        AllOf all => all.Parts.SelectMany(Comparisons),
        AnyOf any => any.Parts.SelectMany(Comparisons),
        Negation negation => Comparisons(negation.Part),
        Comparison comparison => [comparison],
        _ => [],
    };
}
