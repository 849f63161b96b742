using System.Collections.Immutable;
using DiagRules.Facts;
using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Model.Problems;

namespace DiagRules.Replay;

/// <summary>Plays one recorded case, observation by observation, and looks at what each of them does.</summary>
internal sealed class CaseCheck(DiagnosisEngine engine, RecordedCase recorded)
{
    private readonly HashSet<string> _named = new(StringComparer.Ordinal);

    /// <summary>The problems of the case; an observation that cannot be played is the only one then.</summary>
    public ImmutableArray<Problem> Run()
    {
        var session = Start();
        var still = new List<int>();
        var before = new Standing(session.Now());
        for (var i = 0; i < recorded.Observations.Length; i++)
        {
            var observation = recorded.Observations[i];
            if (session.Observe(observation) is { IsAccepted: false } refused)
            {
                return [new Problem(refused.Problem!.Descriptor, $"Case '{recorded.Id}': {refused.Problem.Message}", observation.Place)];
            }

            var after = new Standing(session.Now());
            if (after.IsLike(before))
            {
                still.Add(i);
            }

            before = after;
        }

        var end = session.Now();
        return [.. Contradictions(end), .. Impossible(end), .. Idle(still, end).Select(MovedNothing)];
    }

    private DiagnosisSession Start() => engine.Start(new SessionOptions { Complaint = recorded.Complaint });

    private List<Problem> Contradictions(Moment end)
    {
        var problems = new List<Problem>();
        foreach (var state in end.Known.All.Where(state => state.IsContradictory))
        {
            var graded = end.Pack.Nodes[state.Node];
            var sides = state.Sides.Select(side => $"'{Words.Grades(graded, side.Grades)}' {Source(side.From)}").ToList();
            _named.Add(graded.Id);
            problems.Add(new Problem(
                ProblemCatalogue.CaseContradicts,
                $"Case '{recorded.Id}' contradicts itself on '{graded.Id}', which is {Words.Join(sides)}; it is left out of the weighing. "
                + "Mend what was noted wrongly, or the conditions.",
                PlaceOf(graded.Id)));
        }

        return problems;
    }

    private static string Source(string from) => from switch
    {
        NodeObservation.Observation => "as observed",
        NodeObservation.Complaint => "by the complaint",
        NodeObservation.Readings => "by the readings",
        NodeObservation.Working => "as it was seen working",
        _ => $"by '{from}'",
    };

    private List<Problem> Impossible(Moment end)
    {
        // Where the cause was none of the listed ones, that none is possible is the right answer.
        if (ExclusionSearch.LeavesNone(end) && !recorded.Confirmed.All(cause => cause == RecordedCase.Unlisted))
        {
            return [NoneLeft()];
        }

        var problems = new List<Problem>();
        if (end.Weighing.LeftOut.Count > 0)
        {
            problems.Add(LeftOut(end));
        }

        if (end.Weighing.AreRepairsLeftOut)
        {
            problems.Add(RepairsLeftOut(end.Observed.TriedInVain.Order(StringComparer.Ordinal).ToList()));
        }

        return problems;
    }

    private Problem NoneLeft()
    {
        var set = new ExclusionSearch(Play, recorded.Observations).Smallest();
        _named.UnionWith(set.Select(observation => observation.Id));
        var ids = set.Select(observation => $"'{observation.Id}'").Distinct().ToList();
        var (who, them) = ids.Count switch
        {
            0 => ("The complaint leaves", "it"),
            1 => ($"{ids[0]} leaves", "it"),
            _ => ($"{Words.Join(ids)} together leave", "them"),
        };
        return Impossible(
            $"{who} no listed cause possible. Let the confirmed cause show {them}, or give the grades a small background.",
            set.IsEmpty ? recorded.Place : set[^1].Place);
    }

    private Problem LeftOut(Moment end)
    {
        var left = end.Weighing.LeftOut.Select(node => end.Pack.Nodes.First(graded => end.Network.NodeOf(graded.Node) == node)).ToList();
        _named.UnionWith(left.Select(graded => graded.Id));
        var seen = left.Select(graded => end.Known[graded.Node]?.Grades is { IsEmpty: false } grades
            ? $"'{graded.Id}: {Words.Grades(graded, grades)}'"
            : $"'{graded.Id}'");
        return Impossible(
            $"{Words.Join([.. seen])} cannot be under any listed cause together with the rest, and the weighing leaves "
            + $"{(left.Count == 1 ? "it" : "them")} out. Say which cause shows it, or give its grade a small background.",
            PlaceOf(left[0].Id));
    }

    private Problem RepairsLeftOut(List<string> tried)
    {
        _named.UnionWith(tried);
        return Impossible(
            $"{Words.Join([.. tried.Select(repair => $"'{repair}'")])} tried in vain leave no listed cause, and the weighing leaves that out. "
            + "Say how surely each repair cures, below 1.",
            PlaceOf(tried[0]));
    }

    private Problem Impossible(string message, SourcePlace place) => new(ProblemCatalogue.ImpossibleForAll, $"Case '{recorded.Id}': {message}", place);

    /// <summary>
    /// Those that could all be left out together. The last ones go first, so that of two that say the same the earlier is kept, and with
    /// it what it waits for.
    /// </summary>
    private IEnumerable<Observation> Idle(IEnumerable<int> still, Moment end)
    {
        var (standing, kept, idle) = (new Standing(end), recorded.Observations, new Stack<Observation>());
        foreach (var index in still.Reverse().Where(index => IsMeantToTell(index, end)))
        {
            var without = kept.RemoveAt(index);
            if (new Standing(Play(without)).IsLike(standing))
            {
                kept = without;
                idle.Push(recorded.Observations[index]);
            }
        }

        return idle;
    }

    /// <summary>Some are only kept on record, by intention; of others something else is said already.</summary>
    private bool IsMeantToTell(int index, Moment end)
    {
        var observation = recorded.Observations[index];
        return observation.Value is not (CannotTell or Tried)
            && !_named.Contains(observation.Id)
            && !end.Observed.Altered.Contains(observation.Id)
            && !recorded.Observations.Skip(index + 1).Any(later => later.Id == observation.Id);
    }

    private Moment Play(IEnumerable<Observation> observations)
    {
        var session = Start();
        foreach (var observation in observations)
        {
            session.Observe(observation);
        }

        return session.Now();
    }

    private Problem MovedNothing(Observation observation) => new(
        ProblemCatalogue.MovedNothing,
        $"Case '{recorded.Id}': '{observation.Id}' moved nothing; ranking, advice and cautions are the same without it. Let a cause show it, or leave it out.",
        observation.Place);

    private SourcePlace PlaceOf(string id) => recorded.Observations.LastOrDefault(observation => observation.Id == id)?.Place ?? recorded.Place;
}
