using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Binding;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Checks;

/// <summary>What a foreman would send back in the work of a pack: no repair, no proof, no time, no way out of a danger.</summary>
internal sealed class WorkWarnings(CheckScope scope)
{
    /// <summary>From this chance of working when presented, a cause counts as one that comes and goes.</summary>
    public const double ComesAndGoes = 0.2;

    public void Run()
    {
        CausesWithoutRepair();
        RepairsWithoutProof();
        ChecksWithoutTime();
        IncompleteHazards();
        new StepDangers(scope).Run();
        IntermittentProvedOnce();
        new DangerClearing(scope).Run();
    }

    private void CausesWithoutRepair()
    {
        foreach (var (declared, cause) in scope.Of<Cause>(Section.Causes, Section.Preconditions).Where(cause => cause.Entry.Repairs.IsEmpty))
        {
            var (lacks, remedy) = cause.Precondition is null ? ("repair", "name what cures it") : ("restore", "say what puts it right");
            scope.Warn(ProblemCatalogue.CauseWithoutRepair, declared.Place, $"'{declared.Id}' has no '{lacks}'; {remedy}.", declared);
        }
    }

    private void RepairsWithoutProof()
    {
        foreach (var (declared, _) in scope.Of<Repair>(Section.Repairs).Where(repair => repair.Entry.VerifyBy.IsEmpty))
        {
            scope.Warn(ProblemCatalogue.RepairNotVerified, declared.Place, $"'{declared.Id}' has no 'verify-by'; name the checks that prove it.", declared);
        }
    }

    private void ChecksWithoutTime()
    {
        foreach (var (declared, check) in scope.Of<Check>(Section.Checks).Where(check => check.Entry.Minutes == 0))
        {
            scope.Warn(
                ProblemCatalogue.CheckCostsNothing,
                CheckScope.ValueOf(declared, "minutes"),
                $"'{declared.Id}' costs no time, so it is always worth doing; write its 'minutes'.",
                declared);
        }

        foreach (var finding in scope.Draft.Of(Section.Findings).Where(finding => finding.IsAsked && finding.Body.Find("minutes")?.Value is Tree.ScalarNode { Value: "0" }))
        {
            scope.Warn(
                ProblemCatalogue.CheckCostsNothing,
                CheckScope.ValueOf(finding, "minutes"),
                $"'{finding.Id}' costs no time to ask, so it is always worth asking; write its 'minutes'.",
                finding);
        }
    }

    private void IncompleteHazards()
    {
        foreach (var (declared, hazard) in scope.Of<Hazard>(Section.Hazards))
        {
            var lacking = new[] { (hazard.Avoid, "avoid"), (hazard.Clears, "clears") }.Where(part => part.Item1 is null).Select(part => part.Item2).ToList();
            if (lacking.Count > 0)
            {
                scope.Warn(
                    ProblemCatalogue.HazardIncomplete,
                    declared.Place,
                    $"'{declared.Id}' has no {Wording.Or(lacking)}; say how to keep out of its way, and what makes it go away.",
                    declared);
            }
        }
    }

    private void IntermittentProvedOnce()
    {
        var pattern = scope.Draft.Find(Finding.Pattern)!.Node;
        foreach (var (declared, cause) in scope.Of<Cause>(Section.Causes, Section.Preconditions))
        {
            var shown = cause.Shows.FirstOrDefault(shows => shows.Child == pattern);
            var intermittent = shown is null ? 0 : shown.ByGrade[1][1];
            foreach (var cure in cause.Repairs.Where(_ => intermittent >= ComesAndGoes))
            {
                if (scope.Draft.Find(cure.Repair) is { Entry: Repair { VerifyBy: { IsEmpty: false } proofs } } repair && proofs.All(proof => proof.Times < 2))
                {
                    scope.Warn(
                        ProblemCatalogue.IntermittentVerifiedOnce,
                        CheckScope.PlaceOf(repair, "verify-by"),
                        $"'{declared.Id}' comes and goes ({Distributions.Number(intermittent)}), but '{cure.Repair}' is proved once "
                        + $"({Wording.And(proofs.Select(proof => proof.Check))}); write '{{ check: {proofs[0].Check}, times: 10 }}'.",
                        repair,
                        declared);
                }
            }
        }
    }
}
