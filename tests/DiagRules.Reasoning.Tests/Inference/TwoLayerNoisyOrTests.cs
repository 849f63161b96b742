using System.Text.Json;
using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>
/// "quickscore-6x6" of Data/inference-examples.json: six diseases and six findings, numbers invented, answers by enumeration and by Quickscore (Heckerman
/// 1989).
/// </summary>
public class TwoLayerNoisyOrTests
{
    private static readonly JsonElement Item = ReferenceData.Item(ReferenceData.Json("inference-examples.json").GetProperty("items"), "quickscore-6x6");

    private readonly InferenceEngine _engine;
    private readonly Evidence _evidence;
    private readonly int[] _diseases;

    public TwoLayerNoisyOrTests()
    {
        var builder = new NetworkBuilder();
        _diseases = [.. ReferenceData.Doubles(Item.GetProperty("priors")).Select((prior, d) => builder.AddCause($"d{d}", prior))];
        var w = Item.GetProperty("w[d][f]").EnumerateArray().Select(ReferenceData.Doubles).ToArray();
        var findings = ReferenceData.Doubles(Item.GetProperty("leak"))
            .Select((leak, f) => builder.AddGraded($"f{f}", 2, [1 - leak, leak], [.. _diseases.Select(d => Contribution.OfLaterGrades(d, [w[d][f]]))]))
            .ToArray();
        _engine = new InferenceEngine(builder.Build());
        _evidence = new Evidence(_engine.Network);
        foreach (var f in Item.GetProperty("positive").EnumerateArray())
        {
            _evidence.Observe(findings[f.GetInt32()], 1);
        }

        foreach (var f in Item.GetProperty("negative").EnumerateArray())
        {
            _evidence.Observe(findings[f.GetInt32()], 0);
        }
    }

    [Fact]
    public void Posteriors_AreThoseOfQuickscore()
    {
        var posteriors = _engine.Infer(_evidence, _diseases);

        posteriors.Probability.ShouldBe(Item.GetProperty("p_findings").GetDouble(), 1e-12);
        _diseases.Select(d => posteriors.Of(d, 1)).ToArray().ShouldBe(ReferenceData.Doubles(Item.GetProperty("posterior")), 1e-10);
    }

    [Fact]
    public void MostProbableDiseases_AreThoseOfEnumeration()
    {
        var expected = Item.GetProperty("most_probable_explanation");

        var explanation = _engine.MostProbable(_evidence, _diseases);

        _diseases.Where(d => explanation.Grades[d] == 1).ShouldBe(expected.GetProperty("diseases").EnumerateArray().Select(d => _diseases[d.GetInt32()]));
        explanation.Probability.ShouldBe(expected.GetProperty("p").GetDouble(), 1e-10);
    }
}
