using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Binding;

/// <summary>Reads maps whose keys are ids.</summary>
internal sealed class KeyNames(Names names, Declared? owner, ProblemSink problems)
{
    /// <summary>What the keys name, in the order of the map.</summary>
    public IReadOnlyList<(Declared Named, MapPair Pair)> Read(MapNode map, Target target)
    {
        var read = new List<(Declared Named, MapPair Pair)>();
        var byId = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var pair in map.Pairs)
        {
            foreach (var named in names.All(pair.Key, owner, target))
            {
                if (byId.TryAdd(named.Id, read.Count))
                {
                    read.Add((named, pair));
                }
                else
                {
                    read[byId[named.Id]] = (named, Preferred(named, read[byId[named.Id]].Pair, pair));
                }
            }
        }

        return read;
    }

    private MapPair Preferred(Declared named, MapPair earlier, MapPair later)
    {
        var (isEarlierGeneral, isLaterGeneral) = (IsGeneral(earlier, named), IsGeneral(later, named));
        if (isEarlierGeneral == isLaterGeneral)
        {
            problems.Add(
                ProblemCatalogue.DuplicateKey,
                later.Key.Place,
                $"'{later.Key.Value}' names '{named.Id}' here, as does '{earlier.Key.Value}' in line {earlier.Key.Place.Line}; keep one of them.");
        }

        return isEarlierGeneral ? later : earlier;
    }

    /// <summary>Whether a key stands for several members.</summary>
    private static bool IsGeneral(MapPair pair, Declared named) => pair.Key.Value != named.Id && pair.Key.Copy is null;
}
