using System.Text.Json;
using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>
/// "graded-noisy-max" of Data/inference-examples.json: a model after Henrion (1989), Díez (1993) and Srinivas (1993) with invented numbers, computed in
/// rational arithmetic; the child is Y.
/// </summary>
public class GradedNoisyMaxTests
{
    private const double Tolerance = 1e-10;

    private static readonly JsonElement Item = ReferenceData.Item(ReferenceData.Json("inference-examples.json").GetProperty("items"), "graded-noisy-max");

    private readonly NamedNetwork _network = new();

    public GradedNoisyMaxTests()
    {
        foreach (var prior in Item.GetProperty("priors").EnumerateObject())
        {
            var states = prior.Value.EnumerateObject().ToArray();
            _network.AddTable(prior.Name, [.. states.Select(state => state.Name)], [], [[.. states.Select(state => state.Value.GetDouble())]]);
        }

        var links = Item.GetProperty("links").EnumerateObject()
            .Select(link => (link.Name, link.Value.EnumerateObject().Select(row => ReferenceData.Doubles(row.Value)).ToArray()));
        _network.AddGraded("Y", ReferenceData.Strings(Item.GetProperty("child_states")), ReferenceData.Doubles(Item.GetProperty("leak")), links);
    }

    private int Child => _network["Y"];

    public static TheoryData<int> Queries => [.. Enumerable.Range(0, Item.GetProperty("queries").GetArrayLength())];

    [Theory]
    [MemberData(nameof(Queries))]
    public void Answers_AreThoseOfEnumeration(int number)
    {
        var query = Item.GetProperty("queries")[number];
        var targets = ReferenceData.Strings(query.GetProperty("targets"));
        var evidence = EvidenceOf(query.GetProperty("evidence"));

        foreach (var answer in query.GetProperty("answer").EnumerateObject())
        {
            Answer(evidence, targets, answer.Name.Split('/')).ShouldBe(answer.Value.GetDouble(), Tolerance, answer.Name);
        }

        Math.Exp(_network.Engine.LogProbability(evidence)).ShouldBe(query.GetProperty("p_evidence").GetDouble(), Tolerance);
    }

    [Fact]
    public void ChildGivenBothParents_IsTheExpandedTable()
    {
        foreach (var row in Item.GetProperty("expanded_cpt").EnumerateObject())
        {
            var evidence = new Evidence(_network.Engine.Network);
            var states = row.Name.Split('/');
            evidence.Observe(_network["A"], GradeOf("A", states[0]));
            evidence.Observe(_network["B"], GradeOf("B", states[1]));

            _network.Engine.Infer(evidence, Child).Of(Child).ToArray().ShouldBe(ReferenceData.Doubles(row.Value), Tolerance, row.Name);
        }
    }

    private double Answer(Evidence evidence, string[] targets, string[] states) => targets switch
    {
        [var only] => _network.Engine.Infer(evidence, _network[only]).Of(_network[only], GradeOf(only, states[0])),
        [var first, var second] => _network.Engine.Joint(evidence, _network[first], _network[second])[GradeOf(first, states[0]), GradeOf(second, states[1])],
        _ => throw new ArgumentException("The example asks for one or two nodes.", nameof(targets)),
    };

    private Evidence EvidenceOf(JsonElement states)
    {
        if (states.TryGetProperty("Y", out var y) && y.GetString()!.StartsWith("at least low", StringComparison.Ordinal))
        {
            var evidence = new Evidence(_network.Engine.Network);
            evidence.Observe(Child, [0, 1, 1, 1]);
            return evidence;
        }

        return _network.EvidenceOf(states);
    }

    private int GradeOf(string node, string state) => _network.StatesOf(node).ToList().IndexOf(state);
}
