using DiagRules.Reasoning.Planning;

namespace DiagRules.Benchmarks.Simulation;

/// <summary>One job as chance has it: what is wrong, and what every check would answer and every repair would do.</summary>
/// <remarks>Drawn in advance, so that every policy meets the same jobs.</remarks>
internal sealed class JobDraw
{
    private readonly int _cause;
    private readonly double[] _answers;
    private readonly double[] _cures;

    public JobDraw(Situation situation, Random random)
    {
        _cause = Pick([.. situation.Probabilities, situation.Unlisted], random.NextDouble());
        _answers = [.. situation.Checks.Select(_ => random.NextDouble())];
        _cures = [.. situation.Repairs.Select(_ => random.NextDouble())];
    }

    /// <summary>What a check answers, given what is wrong; independent of other checks, as the planner has it.</summary>
    public int Answer(Situation situation, int check) =>
        Pick([.. situation.Checks[check].Outcomes.Select(o => _cause < o.Likelihoods.Count ? o.Likelihoods[_cause] : o.Unlisted)], _answers[check]);

    public bool IsCuredBy(Situation situation, int repair) =>
        situation.Repairs[repair].Cures.Any(cure => cure.Cause == _cause && _cures[repair] < cure.Probability);

    private static int Pick(double[] weights, double uniform)
    {
        var left = uniform * weights.Sum();
        for (var i = 0; i < weights.Length; i++)
        {
            left -= weights[i];
            if (left < 0)
            {
                return i;
            }
        }

        return Array.FindLastIndex(weights, w => w > 0);
    }
}
