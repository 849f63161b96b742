namespace DiagRules.Replay;

/// <summary>How well a pack does on its confirmed cases. Immutable.</summary>
public sealed record ReplayScores
{
    /// <summary>How many cases are counted: those with the verdict confirmed.</summary>
    public required int Count { get; init; }

    /// <summary>Share of cases whose confirmed cause comes first.</summary>
    public required Measure Top1 { get; init; }

    /// <summary>Share of cases whose confirmed cause is among the first three.</summary>
    public required Measure Top3 { get; init; }

    /// <summary>Mean of one over the rank.</summary>
    public required Measure MeanReciprocalRank { get; init; }

    /// <summary>Mean Brier score, 0..2; less is better.</summary>
    public required Measure Brier { get; init; }

    /// <summary>Mean log loss in nats; less is better.</summary>
    public required Measure LogLoss { get; init; }

    internal static ReplayScores Of(IEnumerable<ReplayedCase> cases)
    {
        var counted = cases.Where(replayed => !replayed.Case.IsProbable).ToList();
        return new ReplayScores
        {
            Count = counted.Count,
            Top1 = Measure.Rate(counted.Count(replayed => replayed.Rank == 1), counted.Count),
            Top3 = Measure.Rate(counted.Count(replayed => replayed.Rank <= 3), counted.Count),
            MeanReciprocalRank = Measure.Mean([.. counted.Select(replayed => 1.0 / replayed.Rank)]),
            Brier = Measure.Mean([.. counted.Select(replayed => replayed.Brier)]),
            LogLoss = Measure.Mean([.. counted.Select(replayed => replayed.LogLoss)]),
        };
    }
}
