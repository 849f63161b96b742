using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>
/// Networks of the size of real packs: causes, three-grade effects, graded findings, two or three parents each. The same seed gives the same one.
/// </summary>
internal sealed class Workload
{
    private readonly NetworkBuilder _builder = new();
    private readonly Random _random;

    public Workload(int causes, int effects, int findings, int seed)
    {
        _random = new Random(seed);
        Causes = [.. Enumerable.Range(0, causes).Select(i => _builder.AddCause($"cause-{i}", 0.01 + (0.05 * _random.NextDouble())))];
        int[] inner = [.. Enumerable.Range(0, effects).Select(i => AddGraded($"effect-{i}", 3, Pick(Causes, 2 + _random.Next(2))))];
        int[] parents = [.. inner, .. Causes[..(causes / 2)]];
        Findings = [.. Enumerable.Range(0, findings).Select(i => AddGraded($"finding-{i}", 2 + _random.Next(3), Pick(parents, 2 + _random.Next(2))))];
        Network = _builder.Build();
    }

    private Workload(int causes, int findings, int parents, Random random)
    {
        _random = random;
        Causes = [.. Enumerable.Range(0, causes).Select(i => _builder.AddCause($"cause-{i}", 0.02))];
        Findings = [.. Enumerable.Range(0, findings).Select(i => AddGraded($"finding-{i}", 3, Pick(Causes, parents)))];
        Network = _builder.Build();
    }

    public Network Network { get; }

    public int[] Causes { get; }

    public int[] Findings { get; }

    public static Workload TwoLayers(int causes, int findings, int parents, int seed) => new(causes, findings, parents, new Random(seed));

    public Evidence RandomEvidence(int observed, int abnormal, int seed)
    {
        var random = new Random(seed);
        var findings = Findings.ToArray();
        random.Shuffle(findings);
        var evidence = new Evidence(Network);
        for (var i = 0; i < observed; i++)
        {
            evidence.Observe(findings[i], i < abnormal ? 1 + random.Next(Network.GradesOf(findings[i]) - 1) : 0);
        }

        return evidence;
    }

    private int AddGraded(string name, int grades, int[] parents)
        => _builder.AddGraded(name, grades, RandomDistribution(grades, 0.97), [.. parents.Select(parent => RandomContribution(parent, grades))]);

    private Contribution RandomContribution(int parent, int grades)
    {
        var rows = Enumerable.Range(1, ParentGrades(parent) - 1).Select(_ => RandomDistribution(grades, 0.1 + (0.4 * _random.NextDouble()))[1..]);
        return Contribution.OfLaterGrades(parent, [.. rows]);
    }

    /// <summary>Causes have two grades, and what comes after them as a parent has three.</summary>
    private int ParentGrades(int node) => node < Causes.Length ? 2 : 3;

    private double[] RandomDistribution(int grades, double first)
    {
        var later = Enumerable.Range(1, grades - 1).Select(_ => 0.1 + _random.NextDouble()).ToArray();
        return [first, .. later.Select(weight => (1 - first) * weight / later.Sum())];
    }

    private int[] Pick(int[] from, int count)
    {
        var shuffled = from.ToArray();
        _random.Shuffle(shuffled);
        return shuffled[..count];
    }
}
