using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;

namespace DiagRules.Rules;

/// <summary>
/// Turns "certainly true" of a condition into a few branches, each a gate that the session evaluates itself and literals that
/// the rule network matches. Negation is pushed to the leaves, so that every branch is plain Kleene truth.
/// </summary>
internal sealed class ConditionSplitter(Pack pack, bool[] isConcluded)
{
    /// <summary>Most branches a condition may split into; beyond it the pack is refused rather than the host slowed down.</summary>
    public const int MostBranches = 256;

    /// <summary>Splits a condition.</summary>
    /// <exception cref="EngineException">It splits into too many branches.</exception>
    public IReadOnlyList<(ImmutableArray<Literal> Literals, Condition? Gate)> Split(Condition condition)
    {
        var sum = Branches(condition, wanted: true);
        return [.. sum.Select(product => (product.Literals, product.Gate))];
    }

    private List<Product> Branches(Condition condition, bool wanted)
    {
        if (!TouchesConcluded(condition))
        {
            return [new([], wanted ? condition : new Negation(condition, condition.Text, condition.Place))];
        }

        return condition switch
        {
            Negation negation => Branches(negation.Part, !wanted),
            AllOf all => Combine(all.Parts, wanted, isProduct: wanted),
            AnyOf any => Combine(any.Parts, wanted, isProduct: !wanted),
            GradeTest test => Leaf(test.Node, wanted ? test.Grades : test.Grades.ComplementIn(GradeCount(test.Node)), wantsUnknown: false),
            KnownGrade known => Leaf(known.Node, GradeSet.All(GradeCount(known.Node)), wantsUnknown: known.WantsKnown != wanted),
            _ => throw new InvalidOperationException($"'{condition.Text}' cannot rest on a finding."),
        };
    }

    private static List<Product> Leaf(int node, GradeSet grades, bool wantsUnknown) =>
        grades.IsEmpty && !wantsUnknown ? [] : [new([new Literal(node, wantsUnknown ? GradeSet.None : grades, wantsUnknown)], null)];

    private List<Product> Combine(ImmutableArray<Condition> parts, bool wanted, bool isProduct)
    {
        List<Product> result = isProduct ? [new([], null)] : [];
        foreach (var part in parts)
        {
            var branches = Branches(part, wanted);
            result = Merge(isProduct ? Cross(result, branches) : [.. result, .. branches]);
            if (result.Count > MostBranches)
            {
                throw new EngineException(
                    $"{part.Place}: the condition '{part.Text}' splits into more than {MostBranches} ways to be true; write it as several rules.");
            }
        }

        return result;
    }

    private static List<Product> Cross(List<Product> left, List<Product> right)
    {
        var result = new List<Product>(left.Count * right.Count);
        foreach (var a in left)
        {
            foreach (var b in right)
            {
                if (Join(a.Literals, b.Literals) is { } literals)
                {
                    result.Add(new(literals, And(a.Gate, b.Gate)));
                }
            }
        }

        return result;
    }

    /// <summary>Both sets of literals at once; <see langword="null"/> when they exclude each other.</summary>
    private static ImmutableArray<Literal>? Join(ImmutableArray<Literal> left, ImmutableArray<Literal> right)
    {
        var joined = left.ToDictionary(literal => literal.Node);
        foreach (var literal in right)
        {
            if (!joined.TryGetValue(literal.Node, out var other))
            {
                joined.Add(literal.Node, literal);
                continue;
            }

            var both = literal.Grades & other.Grades;
            if (literal.WantsUnknown != other.WantsUnknown || (!literal.WantsUnknown && both.IsEmpty))
            {
                return null;
            }

            joined[literal.Node] = literal with { Grades = both };
        }

        return [.. joined.Values.OrderBy(literal => literal.Node)];
    }

    /// <summary>Branches with the same literals become one whose gate is open when either was.</summary>
    private static List<Product> Merge(List<Product> products)
    {
        var merged = new List<Product>(products.Count);
        foreach (var product in products)
        {
            var same = merged.FindIndex(other => other.Literals.AsSpan().SequenceEqual(product.Literals.AsSpan()));
            if (same < 0)
            {
                merged.Add(product);
            }
            else
            {
                merged[same] = merged[same] with { Gate = Or(merged[same].Gate, product.Gate) };
            }
        }

        return merged;
    }

    private static Condition? And(Condition? left, Condition? right) =>
        left is null ? right : right is null ? left : new AllOf([left, right], "", default(SourcePlace));

    private static Condition? Or(Condition? left, Condition? right) =>
        left is null || right is null ? null : new AnyOf([left, right], "", default(SourcePlace));

    private bool TouchesConcluded(Condition condition) => condition switch
    {
        Negation negation => TouchesConcluded(negation.Part),
        AllOf all => all.Parts.Any(TouchesConcluded),
        AnyOf any => any.Parts.Any(TouchesConcluded),
        GradeTest test => isConcluded[test.Node],
        KnownGrade known => isConcluded[known.Node],
        _ => false,
    };

    private int GradeCount(int node) => pack.Nodes[node].Grades.Length;

    private sealed record Product(ImmutableArray<Literal> Literals, Condition? Gate);
}
