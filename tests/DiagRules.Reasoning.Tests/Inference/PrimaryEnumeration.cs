namespace DiagRules.Reasoning.Tests.Inference;

/// <summary>
/// The primary-cause model straight from its definition, by adding up every combination for every primary cause: one cause is present because it is primary,
/// the others by coexistence, and under "not listed" every observation is as likely as on any complaint.
/// </summary>
internal sealed class PrimaryEnumeration
{
    private readonly SmallModel _model;
    private readonly Enumeration _enumeration;
    private readonly double[] _pi;
    private readonly double _unlisted;
    private readonly double _coexistence;
    private readonly double[][] _marginals;

    public PrimaryEnumeration(SmallModel model, Enumeration enumeration, IReadOnlyDictionary<int, double> shares, double unlisted, double coexistence)
    {
        _model = model;
        _enumeration = enumeration;
        var total = shares.Values.Sum() + unlisted;
        _pi = [.. Enumerable.Range(0, model.Causes).Select(cause => shares[cause] / total)];
        _unlisted = unlisted / total;
        _coexistence = coexistence;
        _marginals = [.. model.Nodes.Select((node, k) => Enumerable.Range(0, node.Grades).Select(g => MarginalOf(k, g)).ToArray())];
    }

    /// <summary>Number of causes; as a primary cause it stands for "not listed".</summary>
    public int Unlisted => _model.Causes;

    /// <summary>P(Z = z, e).</summary>
    public double Weight(int z, double[]?[] likelihoods)
    {
        if (z < Unlisted)
        {
            return _pi[z] * Sum(z, likelihoods);
        }

        return likelihoods.Select((values, k) => values is null ? 1 : values.Zip(_marginals[k], (l, m) => l * m).Sum()).Aggregate(_unlisted, (a, b) => a * b);
    }

    public double Total(double[]?[] likelihoods) => Enumerable.Range(0, Unlisted + 1).Sum(z => Weight(z, likelihoods));

    /// <summary>The same likelihoods with a node narrowed down to one grade.</summary>
    public double[]?[] With(double[]?[] likelihoods, int node, int grade)
    {
        var narrowed = (double[]?[])likelihoods.Clone();
        narrowed[node] = [.. Enumerable.Range(0, _model.Nodes[node].Grades).Select(g => g == grade ? likelihoods[node]?[g] ?? 1 : 0)];
        return narrowed;
    }

    public static double[]?[] Without(double[]?[] likelihoods, params int[] nodes)
    {
        var fewer = (double[]?[])likelihoods.Clone();
        Array.ForEach(nodes, node => fewer[node] = null);
        return fewer;
    }

    private double MarginalOf(int node, int grade)
    {
        if (node < _model.Causes)
        {
            var q = _coexistence * _pi[node];
            return grade == 1 ? q : 1 - q;
        }

        var only = With(new double[]?[_model.Nodes.Count], node, grade);
        return Enumerable.Range(0, _model.Causes).Sum(z => _pi[z] * Sum(z, only)) / _pi.Sum();
    }

    private double Sum(int z, double[]?[] likelihoods)
    {
        var sum = 0.0;
        foreach (var (grades, _, children) in _enumeration.Combinations)
        {
            if (grades[z] == 1 && Enumeration.Likelihood(likelihoods, grades) is > 0 and var likelihood)
            {
                sum += RootsGiven(z, grades) * children * likelihood;
            }
        }

        return sum;
    }

    /// <summary>P(roots | Z = z); a root that is no cause keeps its own prior.</summary>
    private double RootsGiven(int z, int[] grades)
    {
        var product = 1.0;
        for (var node = 0; node < _model.Nodes.Count && _model.Nodes[node].Parents.Length == 0; node++)
        {
            var q = node < _model.Causes ? _coexistence * _pi[node] : 0;
            product *= node == z ? grades[node]
                : node < _model.Causes ? (grades[node] == 1 ? q : 1 - q)
                : _model.Nodes[node].Given([])[grades[node]];
        }

        return product;
    }
}
