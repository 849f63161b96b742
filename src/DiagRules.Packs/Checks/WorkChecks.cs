using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Binding;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Checks;

/// <summary>Faults of checks, access states and repairs as a whole.</summary>
internal sealed class WorkChecks(CheckScope scope)
{
    private readonly Decided _decided = new(scope);

    public void Run()
    {
        FindAccessCircles();
        FindEmptyVerifications();
        new Deferrals(scope).Run();
    }

    private void FindAccessCircles()
    {
        var links = scope.Draft.References
            .Where(reference => reference is { From.Section: Section.Access, To.Section: Section.Access } && IsNeed(reference))
            .ToList();
        var byPlace = Comparer<Reference>.Create((left, right) => left.Place.CompareTo(right.Place));
        foreach (var circle in Circles.Find(scope.Draft.Of(Section.Access).Length, links, link => link.From.Index, link => link.To.Index, byPlace))
        {
            var told = string.Join("; ", circle.Select(link => $"'{link.From.Id}' needs '{link.To.Id}' in {link.Place}"));
            scope.Error(ProblemCatalogue.AccessInCircle, circle[0].Place, $"'{circle[0].From.Id}' needs itself in the end: {told}. Take one of these out.");
        }
    }

    /// <summary>Access states name each other under <c>excludes</c> as well.</summary>
    private static bool IsNeed(Reference reference) => reference.From.Entry is Access access && access.Needs.Contains(reference.To.Id)
        && reference.From.Body.Find("needs")?.Value is Tree.ListNode needs && needs.Items.Any(item => item.Place == reference.Place);

    private void FindEmptyVerifications()
    {
        foreach (var (declared, repair) in scope.Of<Repair>(Section.Repairs))
        {
            foreach (var verification in repair.VerifyBy)
            {
                if (scope.Draft.Find(verification.Check) is { IsDamaged: false } check)
                {
                    CheckVerification(declared, verification, check);
                }
            }
        }
    }

    private void CheckVerification(Declared repair, Verification verification, Declared check)
    {
        var decided = _decided.By(check);
        var place = scope.PlaceOf(repair, check);
        if (decided.Count == 0)
        {
            var gives = check.Entry is Check { Gives: var given } ? Wording.And(given) : "nothing";
            scope.Error(
                ProblemCatalogue.VerificationDecidesNothing,
                place,
                $"'{check.Id}' cannot verify '{repair.Id}': it gives {gives}, and no finding is read from that; add 'bands' or 'read' to a "
                + "finding, or name another check.");
        }

        foreach (var finding in verification.Findings.Where(finding => decided.Count > 0 && !decided.Contains(finding)))
        {
            scope.Error(
                ProblemCatalogue.VerificationDecidesNothing,
                place,
                $"'{check.Id}' does not decide '{finding}', by which '{repair.Id}' is to be verified; it decides {Wording.And(decided)}.");
        }
    }
}
