using System.Text.Json;
using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>Networks printed in textbooks and papers, from Data/inference-examples.json; answers by enumeration in rational arithmetic.</summary>
public class TextbookNetworkTests
{
    private const double Tolerance = 1e-10;

    private static readonly JsonElement Items = ReferenceData.Json("inference-examples.json").GetProperty("items");

    /// <summary>
    /// Burglary: Russell and Norvig, Artificial Intelligence, fig. 14.2 (3rd ed.), published 0.284. Icy roads: Jensen, An Introduction to Bayesian Networks
    /// (1996), published 0.59, 0.95, 0.76 (from memory). Chest clinic: Lauritzen and Spiegelhalter (1988), J. R. Statist. Soc. B 50:157-224. Fever: Russell and
    /// Norvig, sec. 14.3, with our own priors.
    /// </summary>
    [Theory]
    [InlineData("rn-burglary")]
    [InlineData("icy-roads")]
    [InlineData("asia")]
    [InlineData("rn-fever")]
    public void PosteriorsFromFullTables_AreThoseOfEnumeration(string id)
    {
        var item = ReferenceData.Item(Items, id);
        var network = new NamedNetwork();
        foreach (var node in item.GetProperty("network").EnumerateArray())
        {
            AddTable(network, node);
        }

        ShouldAnswer(network, item.GetProperty("queries"));
    }

    [Fact]
    public void FeverAsNoisyOr_AnswersLikeItsFullTable()
    {
        var item = ReferenceData.Item(Items, "rn-fever");
        var network = new NamedNetwork();
        foreach (var node in item.GetProperty("network").EnumerateArray().Where(node => node.GetProperty("parents").GetArrayLength() == 0))
        {
            // The first grade has to be the healthy one, so "false" comes first here.
            var prior = ReferenceData.Doubles(node.GetProperty("cpt")[0].GetProperty("p"));
            network.AddTable(node.GetProperty("name").GetString()!, ["false", "true"], [], [[prior[1], prior[0]]]);
        }

        var inhibitions = item.GetProperty("noisyOr").GetProperty("inhibition").EnumerateObject();
        network.AddGraded("Fever", ["false", "true"], [1, 0], inhibitions.Select(link
            => (link.Name, (double[][])[[1, 0], [link.Value.GetDouble(), 1 - link.Value.GetDouble()]])));

        ShouldAnswer(network, item.GetProperty("queries"));
    }

    /// <summary>Net and compound parameters: Henrion (1989), Díez (1993); formulas from memory.</summary>
    [Fact]
    public void LeakyNoisyOr_TakesNetParameters()
    {
        var two = ReferenceData.Item(Items, "leaky-noisy-or-parameters").GetProperty("two_causes");
        var c = ReferenceData.Doubles(two.GetProperty("c"));
        var leak = two.GetProperty("leak").GetDouble();
        var network = new NamedNetwork();
        network.AddTable("first", ["absent", "present"], [], [[0.5, 0.5]]);
        network.AddTable("second", ["absent", "present"], [], [[0.5, 0.5]]);
        network.AddGraded("effect", ["absent", "present"], [1 - leak, leak], [("first", [[1, 0], [1 - c[0], c[0]]]), ("second", [[1, 0], [1 - c[1], c[1]]])]);

        Given(1, 1).ShouldBe(two.GetProperty("p_effect_both").GetDouble(), Tolerance);
        Given(1, 0).ShouldBe(two.GetProperty("p_effect_first_only").GetDouble(), Tolerance);
        Given(0, 0).ShouldBe(two.GetProperty("p_effect_none").GetDouble(), Tolerance);

        double Given(int first, int second)
        {
            var evidence = new Evidence(network.Engine.Network);
            evidence.Observe(network["first"], first);
            evidence.Observe(network["second"], second);
            return network.Engine.Infer(evidence, network["effect"]).Of(network["effect"], 1);
        }
    }

    private static void AddTable(NamedNetwork network, JsonElement node)
    {
        var rows = node.GetProperty("cpt").EnumerateArray().Select(row => ReferenceData.Doubles(row.GetProperty("p")));
        network.AddTable(
            node.GetProperty("name").GetString()!, ReferenceData.Strings(node.GetProperty("states")), ReferenceData.Strings(node.GetProperty("parents")), rows);
    }

    private static void ShouldAnswer(NamedNetwork network, JsonElement queries)
    {
        foreach (var query in queries.EnumerateArray())
        {
            var target = query.GetProperty("target").GetString()!;

            var posteriors = network.Engine.Infer(network.EvidenceOf(query.GetProperty("evidence")), network[target]);

            posteriors.Probability.ShouldBe(query.GetProperty("p_evidence").GetDouble(), Tolerance);
            network.ShouldHave(posteriors, target, query.GetProperty("answer"), Tolerance);
        }
    }
}
