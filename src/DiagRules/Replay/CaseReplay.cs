using System.Collections.Immutable;
using System.Globalization;
using DiagRules.Model.Cases;
using DiagRules.Results;

namespace DiagRules.Replay;

/// <summary>Plays a recorded case: what would the pack have said? Thread-safe.</summary>
public static class CaseReplay
{
    /// <summary>How many next steps count as proposed.</summary>
    private const int ProposedSteps = 3;

    /// <summary>Plays one case.</summary>
    /// <param name="engine">Engine for the chassis of the case.</param>
    /// <param name="recorded">The case; what was seen on opening is not used.</param>
    /// <exception cref="EngineException">The case does not fit the pack.</exception>
    public static ReplayedCase Play(DiagnosisEngine engine, RecordedCase recorded)
    {
        ArgumentNullException.ThrowIfNull(engine);
        ArgumentNullException.ThrowIfNull(recorded);
        var session = engine.StartFrom(recorded);
        var ranking = Rank(session);
        var places = recorded.Confirmed.Select(cause => PlaceOf(ranking, cause)).Order().ToList();
        var best = ranking[places[0] - 1];
        return new ReplayedCase
        {
            Case = recorded,
            Ranking = ranking,
            Rank = places[0],
            Best = best.Cause,
            Confidence = best.Confidence,
            Missed = [.. MissedPlaces(recorded, ranking, places), .. MissedSteps(engine, recorded, session)],
        };
    }

    private static ImmutableArray<RankedCause> Rank(DiagnosisSession session)
    {
        var moment = session.Now();
        var causes = moment.Network.Causes.Select((cause, position) => new RankedCause(cause.Id, moment.ConfidenceAt(position)));
        if (moment.Network.HasShares)
        {
            causes = causes.Append(new RankedCause(RecordedCase.Unlisted, moment.Weighing.Unlisted));
        }

        return [.. causes.OrderByDescending(place => place.Confidence).ThenBy(place => place.Cause, StringComparer.Ordinal)];
    }

    private static int PlaceOf(ImmutableArray<RankedCause> ranking, string cause)
    {
        var index = ranking.Select(place => place.Cause).ToImmutableArray().IndexOf(cause, StringComparer.Ordinal);
        return index >= 0 ? index + 1 : throw new EngineException($"'{cause}' is no cause on this chassis; a case cannot confirm it.");
    }

    private static IEnumerable<string> MissedPlaces(RecordedCase recorded, ImmutableArray<RankedCause> ranking, List<int> places)
    {
        var best = ranking[places[0] - 1];
        if (places[0] > recorded.Expect.Top)
        {
            yield return $"'{best.Cause}' was to be among the first {recorded.Expect.Top} and is number {places[0]} with {Number(best.Confidence)}";
        }

        if (recorded.Expect.Confidence is { } least && best.Confidence < least)
        {
            yield return $"'{best.Cause}' was to reach {Number(least)} and has {Number(best.Confidence)}";
        }

        var most = 2 * places.Count;
        foreach (var place in places.Skip(1).Where(place => place > most))
        {
            yield return $"'{ranking[place - 1].Cause}' was to be among the first {most} and is number {place} with {Number(ranking[place - 1].Confidence)}";
        }
    }

    private static IEnumerable<string> MissedSteps(DiagnosisEngine engine, RecordedCase recorded, DiagnosisSession session)
    {
        var expect = recorded.Expect;
        if (!expect.Hazards.IsEmpty)
        {
            var shown = session.Diagnose().Hazards.Select(hazard => hazard.Hazard).ToHashSet();
            foreach (var hazard in expect.Hazards.Where(hazard => !shown.Contains(hazard)))
            {
                yield return $"the hazard '{hazard}' was to be shown";
            }
        }

        if (expect.NextCheck is null && expect.NeverCheck.IsEmpty)
        {
            yield break;
        }

        var moments = ProposedAlong(engine, recorded);
        if (expect.NextCheck is { } next && !WasProposed(engine, recorded, moments, next))
        {
            yield return $"the check '{next}' was to be among the first {ProposedSteps} next steps just before its result was known, or at the end";
        }

        foreach (var never in expect.NeverCheck.Where(never => moments.Any(proposed => proposed.Contains(never))))
        {
            yield return $"the check '{never}' was never to be proposed, and is";
        }
    }

    /// <summary>The steps proposed before the first observation, after each one, and so at the end.</summary>
    private static List<ImmutableArray<string>> ProposedAlong(DiagnosisEngine engine, RecordedCase recorded)
    {
        var session = engine.Start(new SessionOptions { Complaint = recorded.Complaint, Steps = ProposedSteps });
        var moments = new List<ImmutableArray<string>> { Proposed(session) };
        foreach (var observation in recorded.Observations)
        {
            session.Observe(observation);
            moments.Add(Proposed(session));
        }

        return moments;
    }

    private static ImmutableArray<string> Proposed(DiagnosisSession session) =>
        [.. session.Diagnose().Next.Where(step => step.Kind == StepKind.Check).Select(step => step.Id)];

    private static bool WasProposed(DiagnosisEngine engine, RecordedCase recorded, List<ImmutableArray<string>> moments, string check)
    {
        var gives = engine.Pack.FindCheck(check)?.Gives ?? [];
        var result = recorded.Observations.Select((observation, index) => (observation.Id, index))
            .Where(pair => gives.Contains(pair.Id)).Select(pair => pair.index).DefaultIfEmpty(moments.Count - 1).First();
        return moments[result].Contains(check) || moments[^1].Contains(check);
    }

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
