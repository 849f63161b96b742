using DiagRules.Model;
using DiagRules.Model.Cases;

namespace DiagRules.Steps;

/// <summary>
/// Which access states are open, judged by what was found out: whoever measured behind the cover has it off. Opening one closes
/// those it excludes.
/// </summary>
internal sealed class OpenAccess
{
    private readonly Pack _pack;
    private readonly HashSet<string> _open = new(StringComparer.Ordinal);

    private OpenAccess(Pack pack) => _pack = pack;

    /// <summary>Ids of the access states that are open after a record of observations.</summary>
    public static IReadOnlySet<string> After(Pack pack, IEnumerable<Observation> record) => After(pack, record, []);

    /// <summary>The same after further steps were done.</summary>
    public static IReadOnlySet<string> After(Pack pack, IEnumerable<Observation> record, IEnumerable<WorkStep> steps)
    {
        var access = new OpenAccess(pack);
        foreach (var observation in record)
        {
            access.Follow(observation);
        }

        foreach (var needed in steps.SelectMany(step => WithNeeds(pack, step.Needs)))
        {
            access.Open(needed);
        }

        return access._open;
    }

    /// <summary>An access and all it needs, those first, each once.</summary>
    public static IEnumerable<Access> WithNeeds(Pack pack, IEnumerable<string> needs)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return needs.SelectMany(Visit);

        IEnumerable<Access> Visit(string id) =>
            pack.Find<Access>(id) is { } access && seen.Add(id) ? [.. access.Needs.SelectMany(Visit), access] : [];
    }

    private void Follow(Observation observation)
    {
        if (observation.Value is CannotTell)
        {
            return;
        }

        // Where several checks give the same thing, only what all of them need is certain to be open.
        IEnumerable<string>? common = null;
        foreach (var step in StepsBehind(observation))
        {
            common = common is null ? step.Needs : common.Intersect(step.Needs);
        }

        foreach (var access in WithNeeds(_pack, common ?? []))
        {
            Open(access);
        }
    }

    private IEnumerable<WorkStep> StepsBehind(Observation observation) => observation.Value is Tried
        ? _pack.FindRepair(observation.Id) is { } repair ? [repair] : []
        : _pack.Checks.Where(check => check.Gives.Contains(observation.Id));

    private void Open(Access access)
    {
        if (!_open.Add(access.Id))
        {
            return;
        }

        _open.ExceptWith(access.Excludes);
        _open.ExceptWith(_pack.Access.Where(other => other.Excludes.Contains(access.Id)).Select(other => other.Id));
    }
}
