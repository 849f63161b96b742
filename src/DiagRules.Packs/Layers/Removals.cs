using DiagRules.Model.Problems;
using DiagRules.Packs.Binding;

namespace DiagRules.Packs.Layers;

/// <summary>Reports what a layer took away though something still refers to it.</summary>
internal sealed class Removals(Draft draft)
{
    public void Report()
    {
        foreach (var dangling in draft.Dangling.Distinct().GroupBy(dangling => dangling.Id, StringComparer.Ordinal))
        {
            var places = dangling.Select(mention => mention.Place).Order().Select(place => place.ToString()).Distinct();
            draft.Problems.Add(
                ProblemCatalogue.RemovedButReferred,
                draft.Removed[dangling.Key],
                $"'{dangling.Key}' is taken away here, but {string.Join(", ", places)} still {(places.Count() == 1 ? "refers" : "refer")} to "
                + "it; change what refers to it as well.");
        }
    }
}
