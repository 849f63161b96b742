using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Model.Conditions;

namespace DiagRules.Tests.Rules;

/// <summary>
/// Works out from scratch, without any rule network, what a random pack concludes: one pass over the findings in order of their
/// number, since each depends on earlier ones only; causes last.
/// </summary>
internal sealed class ReferenceEvaluator : IFacts
{
    private readonly Pack _pack;
    private readonly Dictionary<string, Observation> _latest;
    private readonly GradeSet[] _strict;
    private readonly GradeSet[] _lenient;
    private bool _isStrict;

    public ReferenceEvaluator(Pack pack, IEnumerable<Observation> record)
    {
        _pack = pack;
        _latest = record.GroupBy(observation => observation.Id).ToDictionary(group => group.Key, group => group.Last());
        _strict = new GradeSet[pack.Nodes.Length];
        _lenient = new GradeSet[pack.Nodes.Length];

        // Causes that only observations speak about come first, findings next, then what rules say about causes.
        foreach (var node in pack.Causes.Select(cause => cause.Node).Concat(pack.Findings.Select(finding => finding.Node)).Concat([0]))
        {
            Settle(node);
        }
    }

    public GradeSet Lenient(int node) => _lenient[node];

    /// <summary>Ids of the advice rules that hold.</summary>
    public IEnumerable<string> Advice => _pack.Rules.Where(rule => rule.Advise is not null && IsTrue(rule.When, strict: false)).Select(rule => rule.Id);

    public double Reading(int reading) =>
        _latest.GetValueOrDefault($"r{reading}") is { Value: Measured measured } observation && Counts(observation) ? measured.Quantity.Si : double.NaN;

    public double Uncertainty(int reading) =>
        _pack.Readings[reading].Accuracy is { } accuracy && double.IsFinite(Reading(reading)) ? accuracy.StandardUncertainty(Reading(reading)) : 0;

    public GradeSet Grades(int node) => _isStrict ? _strict[node] : _lenient[node];

    public double Parameter(int parameter) => throw new InvalidOperationException("Random packs have no parameters.");

    private bool Counts(Observation observation) => !_isStrict || (observation.Trust ?? 1) >= 0.8;

    private bool IsTrue(Condition condition, bool strict)
    {
        _isStrict = strict;
        return condition.Evaluate(this) == Truth.True;
    }

    private void Settle(int node)
    {
        var strict = new List<GradeSet>();
        var lenient = new List<GradeSet>();
        if (_latest.GetValueOrDefault(_pack.Nodes[node].Id) is { Value: Seen seen } observation)
        {
            lenient.Add(seen.Grades);
            if ((observation.Trust ?? 1) >= 0.8)
            {
                strict.Add(seen.Grades);
            }
        }

        foreach (var read in (_pack.Nodes[node] as Finding)?.Reads ?? [])
        {
            if (IsTrue(read.When, strict: true))
            {
                strict.Add(GradeSet.Of(read.Grade));
            }
            else if (IsTrue(read.When, strict: false))
            {
                lenient.Add(GradeSet.Of(read.Grade));
            }
        }

        foreach (var rule in _pack.Rules.Where(rule => IsTrue(rule.When, strict: true)))
        {
            strict.AddRange(rule.Settles.Where(settled => settled.Node == node).Select(settled => settled.Grades));
            strict.AddRange(rule.RulesOut.Where(cause => cause == node).Select(_ => GradeSet.Of(0)));
        }

        _strict[node] = Agreed(strict);
        _lenient[node] = Agreed([.. strict, .. lenient]);
    }

    private static GradeSet Agreed(IReadOnlyCollection<GradeSet> sides) =>
        sides.Count == 0 ? GradeSet.None : sides.Aggregate((agreed, side) => agreed & side);
}
