using System.Collections.Immutable;
using DiagRules.Model.Cases;

namespace DiagRules.Replay;

/// <summary>What a pack makes of one recorded case. Immutable.</summary>
public sealed record ReplayedCase
{
    /// <summary>The case.</summary>
    public required RecordedCase Case { get; init; }

    /// <summary>Every cause, precondition and <c>unlisted</c>, best first, ties by id.</summary>
    public required ImmutableArray<RankedCause> Ranking { get; init; }

    /// <summary>Rank of the best placed confirmed cause, from 1.</summary>
    public required int Rank { get; init; }

    /// <summary>The best placed confirmed cause.</summary>
    public required string Best { get; init; }

    /// <summary>Confidence of the best placed confirmed cause, 0..1.</summary>
    public required double Confidence { get; init; }

    /// <summary>What the case expects and does not get, as plain sentences; empty when all is met.</summary>
    public ImmutableArray<string> Missed { get; init; } = [];

    /// <summary>Whether every expectation is met.</summary>
    public bool IsMet => Missed.IsEmpty;

    /// <summary>
    /// Squared error summed over causes and unlisted, 0..2 (Brier, Monthly Weather Review 78, 1950). Of several confirmed causes the best
    /// placed one is taken for the truth.
    /// </summary>
    public double Brier => Ranking.Sum(place => Square(place.Confidence - (place.Cause == Best ? 1 : 0)));

    /// <summary>Minus the natural logarithm of the confidence of the truth; infinite when that is 0.</summary>
    public double LogLoss => -Math.Log(Confidence);

    private static double Square(double value) => value * value;
}
