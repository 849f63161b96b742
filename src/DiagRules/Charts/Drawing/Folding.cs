using System.Collections.Immutable;
using DiagRules.Results;

namespace DiagRules.Charts.Drawing;

/// <summary>
/// Folds the tree into boxes: places from which everything goes on alike become one box, answers that lead to the same box one branch, and a further
/// finding of a check whose every answer leads to the same box is not asked.
/// </summary>
internal sealed class Folding
{
    private readonly Dictionary<string, FoldedBox> _boxes = new(StringComparer.Ordinal);

    /// <summary>Boxes in reading order, the first one first.</summary>
    public static IReadOnlyList<FoldedBox> Fold(Place root)
    {
        var first = new Folding().BoxOf(root);
        new Splicing(first).Splice();
        var ordered = new List<FoldedBox>();
        Number(first, ordered);
        return ordered;
    }

    private static void Number(FoldedBox box, List<FoldedBox> ordered)
    {
        if (box.Number > 0)
        {
            return;
        }

        ordered.Add(box);
        box.Number = ordered.Count;
        foreach (var branch in box.Branches)
        {
            if (branch.Target.Box is { } next)
            {
                Number(next, ordered);
            }
        }
    }

    private Target Follow(Place? place) => place switch
    {
        null => new Target(null, ChartEnd.Cured),
        { Step: null } => new Target(null, ChartEnd.Beyond),
        { Step.Kind: StepKind.Specialist } => new Target(null, ChartEnd.Specialist),
        _ => Fold(place, place.Step),
    };

    private Target Fold(Place place, PlacedStep step)
    {
        var branches = Branches(place);
        if (branches is [{ Target.End: ChartEnd.Beyond }])
        {
            // Nothing the chart could say would come of the step.
            return branches[0].Target;
        }

        var saysMore = branches.Count > 1 || step.Hazards.Length + step.Advice.Length > 0;
        return step.IsSameCheck && !saysMore ? branches[0].Target : new Target(Merge(place, step, branches), null);
    }

    private FoldedBox BoxOf(Place root) => Merge(root, root.Step!, Branches(root));

    private List<FoldedBranch> Branches(Place place)
    {
        var branches = new List<FoldedBranch>();
        foreach (var way in place.Ways)
        {
            var target = Follow(way.Next);
            var branch = branches.Find(known => known.Target == target);
            if (branch is null)
            {
                branches.Add(branch = new FoldedBranch(target));
            }

            branch.Mass += place.Reached * way.Probability;
            if (place.Step!.Asked is { } asked)
            {
                branch.Answers.Add((asked, way.Grade));
            }
        }

        return [.. branches.OrderBy(branch => branch.Target.End == ChartEnd.Beyond)];
    }

    private FoldedBox Merge(Place place, PlacedStep step, List<FoldedBranch> branches)
    {
        var key = Key(step, branches);
        if (!_boxes.TryGetValue(key, out var box))
        {
            _boxes.Add(key, box = new FoldedBox(_boxes.Count, step));
            box.Branches.AddRange(branches.Select(branch => new FoldedBranch(branch.Target, branch.Answers)));
        }

        box.Reached += place.Reached;
        for (var i = 0; i < branches.Count; i++)
        {
            box.Branches[i].Mass += branches[i].Mass;
        }

        foreach (var suspect in step.Suspects)
        {
            var mass = box.Suspects.GetValueOrDefault(suspect.Cause).Mass + (place.Reached * suspect.Confidence);
            box.Suspects[suspect.Cause] = (suspect.Title, mass);
        }

        return box;
    }

    private static string Key(PlacedStep step, List<FoldedBranch> branches) => string.Join('|',
        [
            step.Kind.ToString(),
            step.Work?.Id ?? "",
            step.Asked?.Id ?? "",
            step.IsSameCheck.ToString(),
            string.Join(' ', step.Opens),
            string.Join(' ', step.Hazards),
            string.Join(' ', step.Advice.Select(rule => rule.Id)),
            string.Join(' ', step.NotWhile.Select(rule => rule.Id)),
            .. branches.Select(branch => $"{string.Join(',', branch.Answers.Select(answer => answer.Grade))}>{branch.Target.Box?.Id}{branch.Target.End}"),
        ]);
}
