using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Binding;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Checks;

/// <summary>Weak spots of the network: causes that show nothing or look alike, grades that nothing explains, shares out of proportion.</summary>
internal sealed class NetworkWarnings(CheckScope scope)
{
    private readonly int _pattern = scope.Draft.Find(Finding.Pattern)!.Node;

    /// <summary>What can be told of one entry alone.</summary>
    public void RunLocal()
    {
        AbsoluteCertainty();
        CausesThatShowNothing();
        SharesOfNothing();
    }

    /// <summary>What rests on all entries being there.</summary>
    public void RunWhole()
    {
        CausesAlike();
        ShownByNothing();
        GradesWithoutCause();
        SharesOutOfProportion();
    }

    private IEnumerable<(Declared Declared, Cause Entry)> Causes => scope.Of<Cause>(Section.Causes, Section.Preconditions);

    private void AbsoluteCertainty()
    {
        foreach (var (declared, cause) in Causes)
        {
            foreach (var shown in cause.Shows.Where(shown => shown.Child != _pattern && shown.ByGrade[1].Any(part => part >= 1) && shown.ByGrade[1][0] == 0))
            {
                if (scope.Draft.Node(shown.Child) is { Entry: Finding { Question: not null } finding })
                {
                    var grade = finding.Grades[shown.ByGrade[1].IndexOf(shown.ByGrade[1].Max())];
                    scope.Warn(
                        ProblemCatalogue.AbsoluteCertainty,
                        shown.Place,
                        $"'{declared.Id}' shows '{finding.Id}: {grade}' with probability 1, and people are asked for it: one odd observation "
                        + "will rule this cause out; write 0.98 or so.",
                        declared);
                }
            }
        }
    }

    private void CausesThatShowNothing()
    {
        foreach (var (declared, cause) in Causes.Where(cause => cause.Entry.Shows.All(shown => shown.Child == _pattern) && !IsParentOfTable(cause.Declared)))
        {
            scope.Warn(
                ProblemCatalogue.CauseShowsNothing,
                declared.Place,
                $"'{declared.Id}' shows nothing, so no observation speaks for it; say under 'shows' what it does.",
                declared);
        }
    }

    /// <summary>A table that was refused still says who its parents are.</summary>
    private bool IsParentOfTable(Declared declared) =>
        scope.Draft.References.Any(reference => reference.To == declared && reference.From.Body.Find("given") is not null);

    private void SharesOfNothing()
    {
        foreach (var (declared, cause) in Causes.Where(cause => cause.Entry.Share == 0 || cause.Entry.Probability == 0))
        {
            var key = cause.Share == 0 ? "share" : "probability";
            scope.Warn(
                ProblemCatalogue.SharesOutOfProportion,
                CheckScope.ValueOf(declared, key),
                $"'{declared.Id}' has a {key} of 0, so it is never found; give it a small one, or take the cause out.",
                declared);
        }
    }

    /// <summary>Alike is what shows the same with the same probabilities and cannot be looked at itself.</summary>
    private void CausesAlike()
    {
        var seen = scope.Of<Check>(Section.Checks).SelectMany(check => check.Entry.Gives).ToHashSet(StringComparer.Ordinal);
        var parents = scope.Of<Consequence>(Section.Effects, Section.Findings).SelectMany(child => child.Entry.Table?.Parents ?? []).ToHashSet();
        var groups = Causes
            .Where(cause => cause.Entry.Precondition is null && cause.Entry.Shows.Any(shown => shown.Child != _pattern) && !seen.Contains(cause.Entry.Id) && !parents.Contains(cause.Entry.Node))
            .GroupBy(cause => Signature(cause.Entry), StringComparer.Ordinal);
        foreach (var group in groups)
        {
            foreach (var (first, second) in group.Zip(group.Skip(1)))
            {
                var shown = Wording.And(first.Entry.Shows.Where(shows => shows.Child != _pattern).Select(shows => scope.Draft.Node(shows.Child).Id));
                scope.Warn(
                    ProblemCatalogue.CausesAlike,
                    second.Declared.Place,
                    $"'{second.Declared.Id}' cannot be told from '{first.Declared.Id}': both show {shown} alike; add a finding, or join them.",
                    second.Declared,
                    first.Declared);
            }
        }
    }

    private static string Signature(Cause cause) =>
        string.Join(';', cause.Shows.Select(shown => $"{shown.Child}:{string.Join(',', shown.ByGrade[1].Select(Distributions.Number))}"));

    private void ShownByNothing()
    {
        var looked = scope.Draft.References.Where(reference => reference.From.Section is not Section.Checks and not Section.Complaints || IsCondition(reference))
            .Select(reference => reference.To).ToHashSet();
        foreach (var (declared, child) in scope.Of<Consequence>(Section.Effects, Section.Findings))
        {
            if (child.Node == _pattern || child.Table is not null || scope.Parents[child.Node].Any())
            {
                continue;
            }

            // A finding without background that conditions look at is known to rules and not weighed: that is a way to use one.
            if (child is not Finding || child.Background[0] < 1 || !looked.Contains(declared))
            {
                scope.Warn(
                    ProblemCatalogue.ShownByNothing,
                    declared.Place,
                    $"'{declared.Id}' is shown by no cause and no effect, so observing it weighs nothing; say under 'shows' what lets it appear.",
                    declared);
            }
        }
    }

    /// <summary>A check names findings under <c>gives</c> and <c>alters</c> too, which is no use of them by itself.</summary>
    private static bool IsCondition(Reference reference) =>
        reference.From.Entry is Check check && !check.Gives.Contains(reference.To.Id) && !check.Alters.Contains(reference.To.Id);

    private void GradesWithoutCause()
    {
        foreach (var (declared, child) in scope.Of<Consequence>(Section.Effects, Section.Findings).Where(child => child.Entry.Node != _pattern))
        {
            var distributions = scope.Parents[child.Node].SelectMany(link => link.Shown.ByGrade.Skip(1)).Concat(child.Table?.Rows ?? []).ToList();
            if (distributions.Count == 0)
            {
                continue;
            }

            for (var grade = 1; grade < child.Grades.Length; grade++)
            {
                if (child.Background[grade] == 0 && distributions.All(distribution => distribution[grade] == 0))
                {
                    scope.Warn(
                        ProblemCatalogue.GradeWithoutCause,
                        GradePlace(declared, grade),
                        $"'{child.Grades[grade]}' of '{declared.Id}' is shown by nothing and has no background, so observing it is "
                        + "impossible; say what shows it, or give it a small background.",
                        declared);
                }
            }
        }
    }

    private static SourcePlace GradePlace(Declared declared, int grade) =>
        declared.Body.Find("grades")?.Value is Tree.ListNode list && grade < list.Items.Count ? list.Items[grade].Place : declared.Place;

    private void SharesOutOfProportion()
    {
        var shares = Causes.Where(cause => cause.Entry.Share is not null).ToList();
        var sum = shares.Sum(cause => cause.Entry.Share!.Value);
        var all = scope.Head.Unlisted is { } unlisted ? sum + unlisted : sum / (1 - Pack.DefaultUnlistedFraction);
        if (shares.Count < 2 || sum == 0)
        {
            return;
        }

        foreach (var (declared, cause) in shares.Where(cause => cause.Entry.Share > all / 2))
        {
            scope.Warn(
                ProblemCatalogue.SharesOutOfProportion,
                CheckScope.ValueOf(declared, "share"),
                $"'{declared.Id}' has {Percent(cause.Share!.Value / all)} of all shares; a cause behind more than half of the complaints is rarely meant.",
                declared);
        }

        if (scope.Head.Unlisted is { } rest && rest < all / 100)
        {
            scope.Warn(
                ProblemCatalogue.SharesOutOfProportion,
                scope.Head.Tree.Find("unlisted")!.Value.Place,
                $"'unlisted' is {Percent(rest / all)} of all shares; no list is that complete, so what it lacks will be blamed on what it has.");
        }
    }

    private static string Percent(double fraction) => $"{Distributions.Number(Math.Round(fraction * 100, 1))} %";
}
