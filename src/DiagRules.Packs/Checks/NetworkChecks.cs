using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Binding;

namespace DiagRules.Packs.Checks;

/// <summary>Faults of the network of causes, effects and findings as a whole: circles, tables beside contributions, two kinds of weights.</summary>
internal sealed class NetworkChecks(CheckScope scope)
{
    public void Run()
    {
        FindCircles();
        FindTablesBesideShows();
        FindTwoKindsOfWeights();
    }

    private void FindCircles()
    {
        var shown = scope.Parents.SelectMany(child => child.Select(link => new Link(link.Parent, scope.Draft.Node(child.Key), link.Shown.Place)));
        var given = from child in scope.Of<Consequence>(Section.Effects, Section.Findings)
                    where child.Entry.Table is not null
                    from parent in child.Entry.Table!.Parents
                    select new Link(scope.Draft.Node(parent), child.Declared, child.Entry.Table!.Place);
        var nodes = scope.Draft.All.Count(declared => declared.IsGraded);
        foreach (var circle in Circles.Find(nodes, [.. shown, .. given], link => link.Parent.Node, link => link.Child.Node, Link.ByPlace))
        {
            var told = string.Join("; ", circle.Select(link => $"'{link.Parent.Id}' shows '{link.Child.Id}' in {link.Place}"));
            scope.Error(
                ProblemCatalogue.ShowsInCircle,
                circle[0].Place,
                $"'{circle[0].Parent.Id}' shows itself in the end: {told}. Take one of these links out.");
        }
    }

    private void FindTablesBesideShows()
    {
        foreach (var (declared, child) in scope.Of<Consequence>(Section.Effects, Section.Findings))
        {
            if (child.Table is null && declared.Body.Find("table") is null)
            {
                continue;
            }

            var table = CheckScope.PlaceOf(declared, "table");
            if (declared.Body.Find("background") is { } background)
            {
                scope.Error(
                    ProblemCatalogue.TableAndShows,
                    background.Key.Place,
                    $"'{child.Id}' has a table ({table}) and a 'background'; the table says it all, so take one of the two out.");
            }

            foreach (var (parent, shown) in scope.Parents[child.Node])
            {
                scope.Error(
                    ProblemCatalogue.TableAndShows,
                    shown.Place,
                    $"'{parent.Id}' shows '{child.Id}', which has a table ({table}); name '{parent.Id}' in its 'given', or take the table out.");
            }
        }
    }

    private void FindTwoKindsOfWeights()
    {
        var shares = Weights("share").Concat(ComplaintShares()).Concat(Unlisted()).OrderBy(weight => weight.Place).ToList();
        var probabilities = Weights("probability").OrderBy(weight => weight.Place).ToList();
        if (shares.Count == 0 || probabilities.Count == 0)
        {
            return;
        }

        var (first, second) = shares[0].Place.CompareTo(probabilities[0].Place) < 0 ? (shares[0], probabilities[0]) : (probabilities[0], shares[0]);
        scope.Error(
            ProblemCatalogue.ShareAndProbability,
            second.Place,
            $"'{second.Owner}' has a {second.Kind}, and '{first.Owner}' in {first.Place} has a {first.Kind}; a pack gives all its causes "
            + "shares, or all of them probabilities.");
    }

    private IEnumerable<Weight> Weights(string key) =>
        scope.Draft.Of(Section.Causes).Concat(scope.Draft.Of(Section.Preconditions))
            .Where(cause => cause.Body.Find(key) is not null)
            .Select(cause => new Weight(cause.Id, key, cause.Body.Find(key)!.Key.Place));

    private IEnumerable<Weight> ComplaintShares() =>
        scope.Draft.Of(Section.Complaints)
            .Where(complaint => complaint.Body.Find("shares") is not null)
            .Select(complaint => new Weight(complaint.Id, "share", complaint.Body.Find("shares")!.Key.Place));

    private IEnumerable<Weight> Unlisted() =>
        scope.Head.Unlisted is null ? [] : [new Weight("unlisted", "share", scope.Head.PlaceOf("unlisted"))];

    private readonly record struct Weight(string Owner, string Kind, SourcePlace Place);

    private sealed record Link(Declared Parent, Declared Child, SourcePlace Place)
    {
        public static readonly IComparer<Link> ByPlace = Comparer<Link>.Create((left, right) => left.Place.CompareTo(right.Place));
    }
}
