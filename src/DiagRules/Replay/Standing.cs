using System.Collections.Immutable;
using DiagRules.Rules;

namespace DiagRules.Replay;

/// <summary>What somebody beside the machine would see of a moment: how the causes stand, and which rules have something to say.</summary>
internal sealed class Standing(Moment moment)
{
    /// <summary>Rounding of the weighing stays far below it.</summary>
    private const double Same = 1e-9;

    private readonly ImmutableArray<double> _confidences = [.. moment.Weighing.Confidences, moment.Network.HasShares ? moment.Weighing.Unlisted : 0];
    private readonly ImmutableHashSet<RuleLine> _outcomes = [.. moment.Outcomes];

    /// <summary>Whether nobody could tell the two apart.</summary>
    public bool IsLike(Standing other) =>
        _outcomes.SetEquals(other._outcomes)
        && _confidences.Zip(other._confidences).All(pair => Math.Abs(pair.First - pair.Second) <= Same);
}
