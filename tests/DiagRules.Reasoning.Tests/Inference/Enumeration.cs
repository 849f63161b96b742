namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>Answers by adding up every combination of grades. The oracle the library is compared with; shares no code with it.</summary>
internal sealed class Enumeration
{
    private readonly SmallModel _model;

    public Enumeration(SmallModel model)
    {
        _model = model;
        Visit(new int[model.Nodes.Count], 0, 1, 1);
    }

    /// <summary>Every combination its roots allow, with the probability of its roots and of its other nodes given these.</summary>
    public List<(int[] Grades, double Roots, double Children)> Combinations { get; } = [];

    public double Probability(double[]?[] likelihoods) => Sum(likelihoods, _ => true);

    public double Probability(double[]?[] likelihoods, params (int Node, int Grade)[] also)
        => Sum(likelihoods, grades => also.All(pair => grades[pair.Node] == pair.Grade));

    /// <summary>The largest probability of some nodes' grades together with the evidence.</summary>
    public double LargestProbability(double[]?[] likelihoods, int[] nodes)
        => Combinations
            .GroupBy(combination => string.Join(',', nodes.Select(node => combination.Grades[node])))
            .Max(group => group.Sum(c => c.Roots * c.Children * Likelihood(likelihoods, c.Grades)));

    public static double Likelihood(double[]?[] likelihoods, int[] grades)
    {
        var product = 1.0;
        for (var node = 0; node < grades.Length && product > 0; node++)
        {
            product *= likelihoods[node] is { } values ? values[grades[node]] : 1;
        }

        return product;
    }

    private double Sum(double[]?[] likelihoods, Func<int[], bool> isWanted)
    {
        var sum = 0.0;
        foreach (var (grades, roots, children) in Combinations)
        {
            sum += roots > 0 && isWanted(grades) ? roots * children * Likelihood(likelihoods, grades) : 0;
        }

        return sum;
    }

    private void Visit(int[] grades, int node, double roots, double rest)
    {
        if (rest == 0)
        {
            return;
        }

        if (node == grades.Length)
        {
            Combinations.Add(([.. grades], roots, rest));
            return;
        }

        var spec = _model.Nodes[node];
        var distribution = spec.Given([.. spec.Parents.Select(parent => grades[parent])]);
        for (var g = 0; g < spec.Grades; g++)
        {
            grades[node] = g;
            var isRoot = spec.Parents.Length == 0;
            Visit(grades, node + 1, isRoot ? roots * distribution[g] : roots, isRoot ? rest : rest * distribution[g]);
        }
    }
}
