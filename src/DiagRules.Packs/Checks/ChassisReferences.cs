using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Checks;

/// <summary>What an entry refers to must be there on every chassis where the entry is.</summary>
internal sealed class ChassisReferences(CheckScope scope)
{
    public void Run()
    {
        foreach (var (from, to, place) in scope.Draft.References.Distinct())
        {
            if (to.Only.IsEmpty || from.IsDamaged)
            {
                continue;
            }

            var missing = scope.Draft.Chassis.Where(chassis => from.IsOn(chassis) && !to.IsOn(chassis)).ToList();
            if (missing.Count > 0)
            {
                scope.Error(
                    ProblemCatalogue.MissingOnChassis, place, $"'{from.Id}' refers to '{to.Id}', which is not there on chassis {Wording.And(missing)} ('only: [{string.Join(", ", to.Only)}]'); give '{from.Id}' an 'only' as well, or take that of '{to.Id}' out.");
            }
        }
    }
}
