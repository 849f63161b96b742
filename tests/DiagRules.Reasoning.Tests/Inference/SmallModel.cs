using DiagRules.Reasoning.Inference;

namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>A random network small enough to enumerate, with evidence to match. The same seed gives the same one.</summary>
internal sealed class SmallModel
{
    private readonly Random _random;
    private readonly NetworkBuilder _builder = new();

    private SmallModel(int seed) => _random = new Random(seed);

    public List<SmallNode> Nodes { get; } = [];

    public int Causes { get; private set; }

    public Network Network => field ??= _builder.Build();

    /// <summary>A few causes, a root of three grades, effects and findings, graded or with tables.</summary>
    public static SmallModel Mixed(int seed)
    {
        var model = new SmallModel(seed) { Causes = 2 + (seed % 3) };
        model.AddCauses();
        if (model._random.Next(3) == 0)
        {
            model.AddRoot(3);
        }

        var children = model._random.Next(2, 6);
        for (var i = 0; i < children; i++)
        {
            model.AddChild(model._random.Next(1, 4));
        }

        return model;
    }

    /// <summary>Findings with so many causes each that their tables have to be taken apart.</summary>
    public static SmallModel Wide(int seed)
    {
        var model = new SmallModel(seed) { Causes = 8 };
        model.AddCauses();
        for (var i = 0; i < 3; i++)
        {
            model.AddGraded(model._random.Next(5, 9), model._random.Next(2, 4));
        }

        return model;
    }

    /// <summary>Likelihoods for some of the nodes, null for the others.</summary>
    public double[]?[] RandomEvidence(double part = 0.5)
        => [.. Nodes.Select(node => _random.NextDouble() < part ? RandomLikelihoods(node.Grades) : null)];

    public Dictionary<int, double> RandomShares() => Enumerable.Range(0, Causes).ToDictionary(i => i, i => i == 0 ? 2.0 : _random.Next(0, 6));

    public double[] RandomSurvival() => [.. Enumerable.Range(0, Causes).Select(_ => _random.Next(4) switch { 0 => 0, 1 => 0.25, _ => 1.0 })];

    public int Next(int limit) => _random.Next(limit);

    private double[] RandomLikelihoods(int grades)
    {
        var likelihoods = new double[grades];
        if (_random.Next(3) > 0)
        {
            likelihoods[_random.Next(2) == 0 ? 0 : _random.Next(grades)] = 1;
            return likelihoods;
        }

        for (var g = 0; g < grades; g++)
        {
            likelihoods[g] = _random.Next(4) switch { 0 => 0, 1 => 1, _ => _random.NextDouble() * 3 };
        }

        likelihoods[_random.Next(grades)] = 0.5;
        return likelihoods;
    }

    private void AddCauses()
    {
        for (var i = 0; i < Causes; i++)
        {
            AddRoot(2);
        }
    }

    private void AddRoot(int grades)
    {
        var prior = RandomDistribution(grades);
        _builder.AddRoot($"r{Nodes.Count}", prior);
        Nodes.Add(new SmallNode(grades, [], _ => prior));
    }

    private void AddChild(int parents)
    {
        if (_random.Next(4) == 0)
        {
            AddTable(Math.Min(parents, 2), _random.Next(2, 4));
        }
        else
        {
            AddGraded(parents, _random.Next(2, 5));
        }
    }

    private void AddGraded(int count, int grades)
    {
        var parents = RandomParents(count);
        var background = RandomDistribution(grades);
        var rows = parents.Select(parent => Enumerable.Range(0, Nodes[parent].Grades)
            .Select(p => p == 0 ? [1, .. new double[grades - 1]] : RandomDistribution(grades)).ToArray()).ToArray();
        _builder.AddGraded($"g{Nodes.Count}", grades, background, [.. parents.Select((parent, k) => Contribution.Of(parent, rows[k]))]);
        Nodes.Add(new SmallNode(grades, parents, given => LatestOf(background, rows, given)));
    }

    private void AddTable(int count, int grades)
    {
        var parents = RandomParents(count);
        var cards = parents.Select(parent => Nodes[parent].Grades).ToArray();
        var rows = Enumerable.Range(0, cards.Aggregate(1, (product, card) => product * card)).Select(_ => RandomDistribution(grades)).ToArray();
        _builder.AddTable($"t{Nodes.Count}", grades, parents, [.. rows.SelectMany(row => row)]);
        Nodes.Add(new SmallNode(grades, parents, given => rows[given.Zip(cards).Aggregate(0, (row, pair) => (row * pair.Second) + pair.First)]));
    }

    private int[] RandomParents(int count)
    {
        var all = Enumerable.Range(0, Nodes.Count).ToArray();
        _random.Shuffle(all);
        return all[..Math.Min(count, all.Length)];
    }

    /// <summary>Now and then with exact zeros and ones, as "never" and "always" give them.</summary>
    private double[] RandomDistribution(int grades)
    {
        var weights = Enumerable.Range(0, grades).Select(_ => _random.Next(5) == 0 ? 0 : _random.NextDouble()).ToArray();
        weights[_random.Next(grades)] += 0.3;
        return [.. weights.Select(weight => weight / weights.Sum())];
    }

    /// <summary>The definition in cumulative form, a difference of products: not how the library does it.</summary>
    private static double[] LatestOf(double[] background, double[][][] rows, int[] given)
    {
        var distribution = new double[background.Length];
        var before = 0.0;
        for (var g = 0; g < distribution.Length; g++)
        {
            var atMost = background[..(g + 1)].Sum();
            for (var k = 0; k < given.Length; k++)
            {
                atMost *= rows[k][given[k]][..(g + 1)].Sum();
            }

            distribution[g] = atMost - before < 1e-15 ? 0 : atMost - before;
            before = atMost;
        }

        return distribution;
    }
}

/// <summary>A node of a <see cref="SmallModel"/> with its distribution as a function of its parents' grades.</summary>
internal sealed record SmallNode(int Grades, int[] Parents, Func<int[], double[]> Given);
