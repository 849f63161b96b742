namespace DiagRules.Charts.Drawing;

/// <summary>
/// Puts the findings of one check into one box, as a list of which the first answer that fits counts: the further finding that the likeliest way leads to
/// stands below the first one's other answers, and what is left comes last.
/// </summary>
internal sealed class Splicing
{
    private readonly Dictionary<FoldedBox, int> _ways = new(ReferenceEqualityComparer.Instance);
    private readonly List<FoldedBox> _deepestFirst = [];

    public Splicing(FoldedBox first) => Visit(first);

    public void Splice()
    {
        foreach (var box in _deepestFirst)
        {
            if (box.Branches.Where(branch => IsFurther(branch.Target.Box)).MaxBy(branch => branch.Mass) is { } way)
            {
                Splice(box, way);
            }
        }
    }

    private void Visit(FoldedBox box)
    {
        _ways[box] = _ways.GetValueOrDefault(box) + 1;
        if (_ways[box] > 1)
        {
            return;
        }

        foreach (var branch in box.Branches)
        {
            if (branch.Target.Box is { } next)
            {
                Visit(next);
            }
        }

        _deepestFirst.Add(box);
    }

    /// <summary>A further finding that only one way leads to; advice that first holds there keeps its own box.</summary>
    private bool IsFurther(FoldedBox? box) => box is { Step: { IsSameCheck: true, Advice.IsEmpty: true } } && _ways[box] == 1;

    /// <summary>Neighbours in the list that lead to the same place are one branch; the order of the others is not touched.</summary>
    private static void Join(List<FoldedBranch> branches)
    {
        for (var i = branches.Count - 1; i > 0; i--)
        {
            var (above, below) = (branches[i - 1], branches[i]);
            if (above.Target == below.Target && !below.IsOtherwise)
            {
                above.Mass += below.Mass;
                above.Answers.AddRange(below.Answers);
                branches.RemoveAt(i);
            }
        }
    }

    private static void Splice(FoldedBox box, FoldedBranch way)
    {
        var further = way.Target.Box!;
        if (!further.Branches.Exists(branch => branch.IsOtherwise))
        {
            var rest = further.Branches.MaxBy(branch => branch.Mass)!;
            further.Branches.Remove(rest);
            further.Branches.Add(rest);
            rest.IsOtherwise = true;
        }

        var left = further.Branches[^1];
        box.Branches.Remove(way);
        box.Branches.AddRange(further.Branches);
        Join(box.Branches);

        // What is left when nothing fits is the likeliest answer of every finding in the list.
        left.Answers.InsertRange(0, way.Answers);
        box.Step = box.Step with { Hazards = [.. box.Step.Hazards.Union(further.Step.Hazards)] };
    }
}
