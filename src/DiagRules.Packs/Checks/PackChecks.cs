using DiagRules.Model.Cases;
using DiagRules.Packs.Binding;

namespace DiagRules.Packs.Checks;

/// <summary>Everything that can be told only when all entries are there.</summary>
internal sealed class PackChecks(Draft draft, Head head)
{
    private readonly CheckScope _scope = new(draft, head);

    public void Run()
    {
        new DependenceCircles(_scope).Run();
        new NetworkChecks(_scope).Run();
        new WorkChecks(_scope).Run();
        new ChassisReferences(_scope).Run();
        if (draft.Find(Model.Finding.Pattern) is { IsGraded: true })
        {
            Warn();
        }
    }

    /// <summary>After the cases are read.</summary>
    public void RunCases(IReadOnlyCollection<RecordedCase> cases)
    {
        if (!draft.Problems.HasErrors)
        {
            new UsageWarnings(_scope).RunCases(cases);
        }
    }

    /// <summary>What seems to be missing while something was refused may only be what was refused.</summary>
    private void Warn()
    {
        var (usage, network) = (new UsageWarnings(_scope), new NetworkWarnings(_scope));
        usage.RunLocal();
        network.RunLocal();
        new WorkWarnings(_scope).Run();
        new MagnitudeWarnings(_scope).Run();
        if (!draft.Problems.HasErrors)
        {
            usage.RunWhole();
            network.RunWhole();
            new ConditionWarnings(_scope).Run();
            new LimitWarnings(_scope).Run();
        }
    }
}
