using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Model.Problems;
using DiagRules.Packs.Binding;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Checks;

/// <summary>What is there and does nothing: entries nobody refers to, findings nobody can observe, systems that are not listed, causes without a case.</summary>
internal sealed class UsageWarnings(CheckScope scope)
{
    /// <summary>Sections whose entries are there to be referred to.</summary>
    private static readonly string[] Referred =
        [Section.Readings, Section.Findings, Section.Effects, Section.Parameters, Section.Access, Section.Hazards, Section.Repairs];

    private static readonly string[] AskingKeys = ["minutes", "skill", "needs", "hazards", "skip-if"];

    /// <summary>What can be told of one entry alone.</summary>
    public void RunLocal() => SystemsNotListed();

    /// <summary>What rests on all entries being there.</summary>
    public void RunWhole()
    {
        UsedNowhere();
        AskedByOthers();
        OutOfReach();
    }

    /// <summary>Causes that no case confirms; silent in a pack without cases.</summary>
    public void RunCases(IReadOnlyCollection<RecordedCase> cases)
    {
        if (cases.Count == 0)
        {
            return;
        }

        var confirmed = cases.SelectMany(recorded => recorded.Confirmed).ToHashSet(StringComparer.Ordinal);
        var missing = scope.Of<Cause>(Section.Causes, Section.Preconditions)
            .Where(cause => !confirmed.Contains(cause.Entry.Id) && !cause.Entry.Accepts.ContainsKey(ProblemCatalogue.CauseWithoutCase.Code))
            .Select(cause => cause.Entry.Id)
            .ToList();
        if (missing.Count > 0)
        {
            var number = missing.Count == 1 ? "1 cause has" : $"{missing.Count} causes have";
            scope.Warn(ProblemCatalogue.CauseWithoutCase, scope.Head.Place, $"'{scope.Head.Id}': {number} no recorded case ({string.Join(", ", missing)}).");
        }
    }

    private void SystemsNotListed()
    {
        foreach (var (declared, cause) in scope.Of<Cause>(Section.Causes, Section.Preconditions))
        {
            if (cause.System is { } system && !scope.Draft.Systems.ContainsKey(system))
            {
                var known = scope.Draft.Systems.IsEmpty ? "pack.yaml has no 'systems'" : $"pack.yaml lists {Wording.And(scope.Draft.Systems.Keys)}";
                scope.Warn(
                    ProblemCatalogue.SystemNotListed,
                    CheckScope.ValueOf(declared, "system"),
                    $"No system '{Excerpt.Of(system)}'; {known}.{Spelling.DidYouMean(system, scope.Draft.Systems.Keys)}",
                    declared);
            }
        }
    }

    private void UsedNowhere()
    {
        var used = scope.Draft.References.Where(reference => reference.From != reference.To).Select(reference => reference.To).ToHashSet();
        foreach (var declared in Referred.SelectMany(section => scope.Draft.Of(section)))
        {
            if (used.Contains(declared) || declared.Id == Finding.Pattern || declared.IsAsked || DoesSomething(declared))
            {
                continue;
            }

            scope.Warn(
                ProblemCatalogue.UsedNowhere,
                declared.Place,
                $"'{declared.Id}' in '{declared.Section}' is used nowhere; refer to it, or take it out.",
                declared);
        }
    }

    /// <summary>A finding that is read, or that shows something, works without being referred to.</summary>
    private static bool DoesSomething(Declared declared) =>
        declared.Entry is Consequence { Shows.IsEmpty: false } || declared.Entry is Finding finding && (finding.Bands is not null || finding.Reads.Length > 0) && finding.Background[0] < 1;

    /// <summary>What a finding says on asking counts only where its question is the check.</summary>
    private void AskedByOthers()
    {
        foreach (var finding in scope.Draft.Of(Section.Findings).Where(finding => !finding.IsAsked))
        {
            var idle = AskingKeys.Where(key => finding.Body.Find(key) is not null).ToList();
            if (idle.Count > 0)
            {
                var why = finding.Body.Find("question") is null ? "it has no question" : "a check gives it";
                scope.Warn(
                    ProblemCatalogue.UsedNowhere,
                    CheckScope.PlaceOf(finding, idle[0]),
                    $"{Wording.And(idle)} of '{finding.Id}' {(idle.Count > 1 ? "count" : "counts")} for nothing, since {why}; move it to the "
                    + "check, or take it out.",
                    finding);
            }
        }
    }

    private void OutOfReach()
    {
        var given = scope.Draft.References
            .Where(reference => reference.From.Section is Section.Checks or Section.Complaints)
            .Select(reference => reference.To)
            .ToHashSet();
        var settled = scope.Of<Rule>(Section.Rules).SelectMany(rule => rule.Entry.Settles).Select(settles => settles.Node).ToHashSet();
        foreach (var (declared, finding) in scope.Of<Finding>(Section.Findings))
        {
            if (finding.Question is null && finding.Bands is null && finding.Reads.IsEmpty && !given.Contains(declared) && !settled.Contains(finding.Node))
            {
                scope.Warn(
                    ProblemCatalogue.FindingOutOfReach,
                    declared.Place,
                    $"'{declared.Id}' can be observed by nobody: it has no question, no check gives it, nothing reads or settles it; add one "
                    + "of these, or make it an effect.",
                    declared);
            }
        }
    }
}
