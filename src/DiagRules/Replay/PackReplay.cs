using System.Collections.Immutable;
using System.Globalization;
using DiagRules.Model;
using DiagRules.Model.Problems;

namespace DiagRules.Replay;

/// <summary>What a pack makes of all its recorded cases. Immutable.</summary>
public sealed record PackReplay
{
    /// <summary>The pack.</summary>
    public required Pack Pack { get; init; }

    /// <summary>The cases in the order of their ids, probable ones too.</summary>
    public required ImmutableArray<ReplayedCase> Cases { get; init; }

    /// <summary>Scores over the confirmed ones.</summary>
    public required ReplayScores Scores { get; init; }

    /// <summary>Expectations not met (DR6007) and acceptance not reached (DR6008).</summary>
    public required ImmutableArray<Problem> Problems { get; init; }

    /// <summary>Whether every expectation is met and every measure of <c>acceptance</c> reached.</summary>
    public bool IsAccepted => Problems.IsEmpty;

    /// <summary>Plays all cases of a pack, in parallel; the result does not depend on how many threads there are.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="cancellation">Stops between two cases.</param>
    /// <exception cref="EngineException">The pack cannot be compiled, or a case does not fit it.</exception>
    public static PackReplay Play(Pack pack, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(pack);
        var engines = new ChassisEngines(pack);
        var cases = pack.Cases.OrderBy(recorded => recorded.Id, StringComparer.Ordinal)
            .AsParallel().AsOrdered().WithCancellation(cancellation)
            .Select(recorded => CaseReplay.Play(engines.For(recorded.Chassis), recorded))
            .ToImmutableArray();
        var scores = ReplayScores.Of(cases);
        return new PackReplay
        {
            Pack = pack,
            Cases = cases,
            Scores = scores,
            Problems = [.. cases.Where(replayed => !replayed.IsMet).Select(NotMet), .. NotReached(pack, cases, scores)],
        };
    }

    private static Problem NotMet(ReplayedCase replayed)
    {
        var ranking = string.Join(", ", replayed.Ranking.Take(5).Select(place => $"{place.Cause} {Number(place.Confidence)}"));
        return new Problem(
            ProblemCatalogue.ExpectationNotMet,
            $"Case '{replayed.Case.Id}': {string.Join("; ", replayed.Missed)}. Ranking: {ranking}.",
            replayed.Case.Place);
    }

    private static IEnumerable<Problem> NotReached(Pack pack, ImmutableArray<ReplayedCase> cases, ReplayScores scores)
    {
        foreach (var (measure, asked) in pack.Acceptance.OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            var (reached, isGood) = measure switch
            {
                "top-1" => (scores.Top1.Value, scores.Top1.Value >= asked),
                "top-3" => (scores.Top3.Value, scores.Top3.Value >= asked),
                _ => (scores.Brier.Value, scores.Brier.Value <= asked),
            };
            if (scores.Count > 0 && !isGood)
            {
                var failing = cases.Where(replayed => !replayed.Case.IsProbable && replayed.Rank > (measure == "top-3" ? 3 : 1)).Select(replayed => replayed.Case.Id);
                yield return new Problem(
                    ProblemCatalogue.AcceptanceNotReached,
                    $"'{measure}' is {Number(reached)} over {scores.Count} cases and was to be {Number(asked)}; cases that fail: {string.Join(", ", failing)}.",
                    pack.Place);
            }
        }
    }

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
