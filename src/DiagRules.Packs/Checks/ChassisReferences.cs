using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Checks;

/// <summary>What an entry refers to must be there on every chassis where the entry is.</summary>
internal sealed class ChassisReferences(CheckScope scope)
{
    private const int MostNamed = 5;

    public void Run()
    {
        foreach (var (from, to, place) in scope.Draft.References.Distinct())
        {
            if (to.Only.IsEmpty || from.IsDamaged)
            {
                continue;
            }

            var present = to.Only.ToHashSet(StringComparer.Ordinal);
            var missing = (from.Only.IsEmpty ? scope.Draft.Chassis : from.Only).Where(chassis => !present.Contains(chassis)).Take(MostNamed + 1).ToList();
            if (missing.Count > 0)
            {
                var named = Wording.And(missing.Take(MostNamed)) + (missing.Count > MostNamed ? " and more" : "");
                scope.Error(
                    ProblemCatalogue.MissingOnChassis,
                    place,
                    $"'{from.Id}' refers to '{to.Id}', which is not there on chassis {named} ('only: [{string.Join(", ", to.Only)}]'); give "
                    + $"'{from.Id}' an 'only' as well, or take that of '{to.Id}' out.");
            }
        }
    }
}
