using System.Collections.Immutable;
using DiagRules.Model;

namespace DiagRules.Charts.Drawing;

/// <summary>A box in the making. Masses are probabilities seen from the root, added up over the ways that lead here.</summary>
internal sealed class FoldedBox(int id, PlacedStep step)
{
    public int Id => id;

    public PlacedStep Step { get; set; } = step;

    public int Number { get; set; }

    public double Reached { get; set; }

    public List<FoldedBranch> Branches { get; } = [];

    /// <summary>Title and mass of the causes suspected.</summary>
    public Dictionary<string, (string Title, double Mass)> Suspects { get; } = new(StringComparer.Ordinal);

    /// <summary>Findings and causes that are asked about, in order, each once.</summary>
    public IEnumerable<Graded> Asked => Branches.SelectMany(branch => branch.Answers).Select(answer => answer.Asked).Distinct(ReferenceEqualityComparer.Instance).Cast<Graded>();

    public ImmutableArray<ChartSuspect> MeanSuspects() =>
        [.. Suspects
            .Select(pair => new ChartSuspect(pair.Key, pair.Value.Title, pair.Value.Mass / Reached))
            .OrderByDescending(suspect => suspect.Confidence).ThenBy(suspect => suspect.Cause, StringComparer.Ordinal)];
}

/// <summary>Answers that lead to one place.</summary>
internal sealed class FoldedBranch(Target target, IEnumerable<(Graded Asked, int Grade)>? answers = null)
{
    public Target Target => target;

    public List<(Graded Asked, int Grade)> Answers { get; } = [.. answers ?? []];

    public double Mass { get; set; }

    /// <summary>Whether it holds what is left when none of the branches before fits.</summary>
    public bool IsOtherwise { get; set; }
}

/// <summary>Where a branch leads: a box, or an end.</summary>
internal sealed record Target(FoldedBox? Box, ChartEnd? End);
