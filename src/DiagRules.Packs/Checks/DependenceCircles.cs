using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Binding;
using DiagRules.Packs.Conditions;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Checks;

/// <summary>
/// Readings, findings and ruled-out causes are settled in one pass, in order of dependence; a circle among <c>from</c>, <c>bands</c>,
/// <c>read</c>, <c>must</c>, <c>settles</c> and <c>rule-out</c> leaves no such order.
/// </summary>
internal sealed class DependenceCircles(CheckScope scope)
{
    private readonly Dictionary<Declared, int> _numbers = scope.Draft.All.Select((declared, i) => (declared, i)).ToDictionary(pair => pair.declared, pair => pair.i);

    public void Run()
    {
        var links = Derived().Concat(Read()).Concat(Demanded()).Concat(Ruled()).ToList();
        foreach (var circle in Circles.Find(_numbers.Count, links, link => _numbers[link.User], link => _numbers[link.Source], Link.ByPlace))
        {
            var told = string.Join("; ", circle.Select(link => link.ToString()));
            scope.Error(ProblemCatalogue.RulesInCircle, circle[0].Place, $"'{circle[0].User.Id}' depends on itself: {told}. Take one of these links out.");
        }
    }

    /// <summary>Taken from the text: what stands in a circle has not been bound.</summary>
    private IEnumerable<Link> Derived() =>
        from reading in scope.Draft.Of(Section.Readings)
        where reading.Body.Find("from")?.Value is ScalarNode
        let text = (ScalarNode)reading.Body.Find("from")!.Value
        from id in MentionedIds.In(text.Text)
        let source = scope.Draft.Find(SetNames.Replace(id.Value, set => text.Copy?.Members.GetValueOrDefault(set)))
        where source is { Section: Section.Readings }
        select new Link(reading, source, id.Place, "'from'", false);

    private IEnumerable<Link> Read()
    {
        foreach (var (declared, finding) in scope.Of<Finding>(Section.Findings))
        {
            if (finding.Bands is { } bands)
            {
                var of = scope.Draft.Of(Section.Readings)[bands.Of.Index];
                yield return new Link(declared, of, CheckScope.PlaceOf(declared, "bands"), "'bands'", false);
                var mentions = bands.Limits.SelectMany(limit => Mention.In(limit, scope.Draft)).Concat(bands.If is null ? [] : Mention.In(bands.If, scope.Draft));
                foreach (var mention in mentions)
                {
                    yield return new Link(declared, mention.To, mention.Place, "'bands'", mention.AsksUnknown);
                }
            }

            foreach (var link in finding.Reads.SelectMany(read => Links(declared, read.When, "'read'")))
            {
                yield return link;
            }
        }
    }

    private IEnumerable<Link> Demanded() =>
        scope.Of<Cause>(Section.Preconditions).SelectMany(cause => Links(cause.Declared, cause.Entry.Precondition!.Must, "'must'"));

    private IEnumerable<Link> Ruled() =>
        from rule in scope.Of<Rule>(Section.Rules)
        from node in rule.Entry.Settles.Select(settled => settled.Node).Concat(rule.Entry.RulesOut)
        from link in Links(scope.Draft.Node(node), rule.Entry.When, $"rule '{rule.Entry.Id}'")
        select link;

    private IEnumerable<Link> Links(Declared user, Condition condition, string via) =>
        Mention.In(condition, scope.Draft).Select(mention => new Link(user, mention.To, mention.Place, via, mention.AsksUnknown));

    /// <summary>One entry depends on another.</summary>
    private sealed record Link(Declared User, Declared Source, SourcePlace Place, string Via, bool AsksUnknown)
    {
        public static readonly IComparer<Link> ByPlace = Comparer<Link>.Create((left, right) => left.Place.CompareTo(right.Place));

        public override string ToString() => $"'{User.Id}' looks at '{Source.Id}' by {Via} in {Place}{(AsksUnknown ? ", where it asks for 'unknown'" : "")}";
    }
}
