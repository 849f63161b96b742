using DiagRules.Model.Problems;
using DiagRules.Packs.Checks;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Layers;

/// <summary>Finds the bases of a pack, and theirs: each in one version that suits all who ask for it.</summary>
internal sealed class BaseResolver(Catalog catalog, PackLimits limits, ProblemSink problems)
{
    // Choosing a version can bring in packs that ask for another one; each round keeps all requests, so rounds are few.
    private const int MostRounds = 64;

    private readonly Dictionary<CatalogPack, (PackTrees Trees, IReadOnlyList<BaseRequest> Requests)> _read = [];

    /// <summary>The packs in order, each after those it builds on and the given one last; <see langword="null"/> after reporting.</summary>
    public IReadOnlyList<LayerPack>? Resolve(PackTrees pack)
    {
        var own = BaseRequest.Of(pack);
        var chosen = new Dictionary<string, CatalogPack>(StringComparer.Ordinal);
        for (var round = 0; round < MostRounds; round++)
        {
            var requests = Gather(own, chosen);
            if (FindCircle(pack.Id, requests))
            {
                return null;
            }

            var next = Choose(requests);
            if (next is null)
            {
                return null;
            }

            if (next.Count == chosen.Count && next.All(pair => chosen.GetValueOrDefault(pair.Key) == pair.Value))
            {
                return Order(pack, own, chosen);
            }

            chosen = next;
        }

        problems.Add(
            ProblemCatalogue.NoVersionFits,
            own[0].Wanted.Place,
            $"'{pack.Id}' builds on packs whose demands on each other's versions do not settle; ask for narrower versions.");
        return null;
    }

    /// <summary>All requests, from the pack through the bases chosen so far.</summary>
    private List<BaseRequest> Gather(IReadOnlyList<BaseRequest> own, Dictionary<string, CatalogPack> chosen)
    {
        var all = new List<BaseRequest>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var open = new Queue<BaseRequest>(own);
        while (open.TryDequeue(out var request))
        {
            all.Add(request);
            if (seen.Add(request.Wanted.Id) && chosen.TryGetValue(request.Wanted.Id, out var found))
            {
                foreach (var further in Read(found).Requests)
                {
                    open.Enqueue(further);
                }
            }
        }

        return all;
    }

    private (PackTrees Trees, IReadOnlyList<BaseRequest> Requests) Read(CatalogPack found)
    {
        if (!_read.TryGetValue(found, out var read))
        {
            var trees = PackTreesReader.Read(found.Files, limits);
            read = (trees, BaseRequest.Of(trees));
            _read.Add(found, read);
        }

        return read;
    }

    private bool FindCircle(string root, List<BaseRequest> requests)
    {
        var ids = requests.SelectMany(request => new[] { request.By, request.Wanted.Id }).Prepend(root).Distinct(StringComparer.Ordinal).ToList();
        var byPlace = Comparer<BaseRequest>.Create((left, right) => left.Wanted.Place.CompareTo(right.Wanted.Place));
        var circles = Circles.Find(ids.Count, requests, request => ids.IndexOf(request.By), request => ids.IndexOf(request.Wanted.Id), byPlace);
        foreach (var circle in circles)
        {
            var told = string.Join("; ", circle.Select(request => $"'{request.By}' extends '{request.Wanted.Id}' in {request.Wanted.Place}"));
            problems.Add(ProblemCatalogue.PacksInCircle, circle[0].Wanted.Place, $"'{circle[0].By}' extends itself in the end: {told}. Take one of these out.");
        }

        return circles.Count > 0;
    }

    private Dictionary<string, CatalogPack>? Choose(List<BaseRequest> requests)
    {
        var chosen = new Dictionary<string, CatalogPack>(StringComparer.Ordinal);
        var isComplete = true;
        foreach (var asked in requests.GroupBy(request => request.Wanted.Id, StringComparer.Ordinal))
        {
            var fitting = catalog.Of(asked.Key).FirstOrDefault(pack => asked.All(request => request.Wanted.Range.Contains(pack.Version)));
            if (fitting is null)
            {
                Report([.. asked.DistinctBy(request => (request.By, request.Wanted.Range.Text))]);
                isComplete = false;
            }
            else
            {
                chosen[asked.Key] = fitting;
            }
        }

        return isComplete ? chosen : null;
    }

    private void Report(IReadOnlyList<BaseRequest> asked)
    {
        var wanted = asked[0].Wanted;
        var versions = catalog.Of(wanted.Id).Select(pack => pack.Version.ToString()).Distinct().ToList();
        if (versions.Count == 0)
        {
            problems.Add(
                ProblemCatalogue.BaseNotFound,
                wanted.Place,
                $"No pack '{wanted.Id}' ({wanted.Range} is asked for) in the catalog, which has no version of "
                + $"it.{Spelling.DidYouMean(wanted.Id, catalog.Ids)}");
            return;
        }

        var told = string.Join(", ", asked.Select(request => $"'{request.By}' asks for {request.Wanted.Range}"));
        problems.Add(ProblemCatalogue.NoVersionFits, wanted.Place, $"No version of '{wanted.Id}' fits: {told}; the catalog has {string.Join(", ", versions)}.");
    }

    private List<LayerPack> Order(PackTrees root, IReadOnlyList<BaseRequest> own, Dictionary<string, CatalogPack> chosen)
    {
        var ordered = new List<LayerPack>();
        var done = new Dictionary<string, LayerPack>(StringComparer.Ordinal);
        foreach (var request in own)
        {
            Put(request.Wanted.Id);
        }

        ordered.Add(Layer(root, own));
        return ordered;

        void Put(string id)
        {
            if (done.ContainsKey(id))
            {
                return;
            }

            var (trees, requests) = Read(chosen[id]);
            foreach (var request in requests)
            {
                Put(request.Wanted.Id);
            }

            done[id] = Layer(trees, requests);
            ordered.Add(done[id]);
        }

        LayerPack Layer(PackTrees trees, IReadOnlyList<BaseRequest> requests) =>
            new(trees, requests.SelectMany(request => done[request.Wanted.Id].Bases.Append(request.Wanted.Id)).ToHashSet(StringComparer.Ordinal));
    }
}

/// <summary>A pack among its layers.</summary>
/// <param name="Trees">Its own text.</param>
/// <param name="Bases">Ids of the packs it builds on, near and far.</param>
internal sealed record LayerPack(PackTrees Trees, IReadOnlySet<string> Bases);
