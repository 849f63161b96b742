using System.Text.Json;
using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>
/// The primary-cause model against Data/session-examples.json: exhaustive enumeration in exact rationals, invented packs, 12 significant digits.
/// </summary>
public class SessionExampleTests
{
    private const double Tolerance = 1e-9;

    public static TheoryData<string, int> Cases
    {
        get
        {
            var cases = new TheoryData<string, int>();
            foreach (var item in Items.EnumerateArray())
            {
                for (var i = 0; i < item.GetProperty("cases").GetArrayLength(); i++)
                {
                    cases.Add(item.GetProperty("id").GetString()!, i);
                }
            }

            return cases;
        }
    }

    public static TheoryData<string> Ids => [.. Items.EnumerateArray().Select(item => item.GetProperty("id").GetString()!)];

    private static JsonElement Items => ReferenceData.Json("session-examples.json").GetProperty("items");

    [Theory]
    [MemberData(nameof(Cases))]
    public void Confidences_AreThoseOfEnumeration(string id, int number)
    {
        var item = ReferenceData.Item(Items, id);
        var pack = new SessionExamplePack(item.GetProperty("pack"));
        var example = item.GetProperty("cases")[number];

        var weighing = pack.Model.Weigh(pack.EvidenceOf(example));

        foreach (var answer in example.GetProperty("answer").EnumerateObject())
        {
            var confidence = answer.Name == "(unlisted)" ? weighing.Unlisted : weighing.Of(pack.NodeOf(answer.Name));
            confidence.ShouldBe(answer.Value.GetDouble(), Tolerance, answer.Name);
        }

        weighing.LeftOut.ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void ProbabilityOfObservations_IsThatOfEnumeration(string id, int number)
    {
        var item = ReferenceData.Item(Items, id);
        var pack = new SessionExamplePack(item.GetProperty("pack"));
        var example = item.GetProperty("cases")[number];
        var evidence = pack.EvidenceOf(example);

        var log = pack.Model.Weigh(evidence).LogProbability;

        Math.Exp(log).ShouldBe(example.GetProperty("p_observations").GetDouble(), Tolerance);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void MarginalsOfFindings_AreThoseOfEnumeration(string id)
    {
        var item = ReferenceData.Item(Items, id);
        var pack = new SessionExamplePack(item.GetProperty("pack"));

        foreach (var finding in item.GetProperty("finding_marginals").EnumerateObject())
        {
            var expected = finding.Value.EnumerateObject().Select(grade => grade.Value.GetDouble()).ToArray();
            pack.Model.MarginalOf(pack.NodeOf(finding.Name)).ToArray().ShouldBe(expected, Tolerance, finding.Name);
        }
    }
}
