using DiagRules.Reasoning.Inference.Elimination;

namespace DiagRules.Reasoning.Inference;

/// <summary>Builds a <see cref="Network"/>, parents before children.</summary>
/// <remarks>
/// Every distribution must add up to 1 within 1e-6 and is then divided by its sum. Not thread-safe; one builder may build several networks, each with the nodes
/// added so far.
/// </remarks>
public sealed class NetworkBuilder
{
    /// <summary>Keeps the table over a node and two parents below a few hundred thousand cells.</summary>
    private const int MostGrades = 64;

    private readonly List<string> _names = [];
    private readonly List<NodeModel> _nodes = [];

    /// <summary>Number of nodes added so far; the number the next one will get.</summary>
    public int Count => _nodes.Count;

    /// <summary>Adds a node without parents.</summary>
    /// <param name="name">What messages call it.</param>
    /// <param name="prior">Probability of each grade.</param>
    /// <returns>The node's number.</returns>
    /// <exception cref="ArgumentException"><paramref name="prior"/> has fewer than 2 or more than 64 grades, or is no distribution.</exception>
    public int AddRoot(string name, IReadOnlyList<double> prior)
    {
        ArgumentNullException.ThrowIfNull(prior);
        RequireGrades(name, prior.Count, nameof(prior));
        return Add(name, NodeModel.Root(Distribution.Normalised([.. prior], $"The prior of '{name}'", nameof(prior))));
    }

    /// <summary>Adds a cause: a root with the grades absent and present.</summary>
    /// <param name="name">What messages call it.</param>
    /// <param name="probability">Probability of present, 0..1.</param>
    /// <returns>The node's number.</returns>
    public int AddCause(string name, double probability)
    {
        Distribution.RequireProbability(probability, $"the probability of '{name}'", nameof(probability));
        return AddRoot(name, [1 - probability, probability]);
    }

    /// <summary>Adds a child that takes the latest grade produced by any contribution or by the background.</summary>
    /// <param name="name">What messages call it.</param>
    /// <param name="grades">Number of grades, 2 to 64.</param>
    /// <param name="background">How probable each grade is when no parent contributes anything (the leak).</param>
    /// <param name="contributions">One per parent; their order does not matter. None is allowed.</param>
    /// <returns>The node's number.</returns>
    /// <exception cref="ArgumentException">
    /// A distribution has the wrong length or sum, a parent is unknown or named twice, or a parent's first grade contributes something.
    /// </exception>
    public int AddGraded(string name, int grades, IReadOnlyList<double> background, params IReadOnlyList<Contribution> contributions)
    {
        ArgumentNullException.ThrowIfNull(background);
        ArgumentNullException.ThrowIfNull(contributions);
        RequireGrades(name, grades, nameof(grades));
        var leak = DistributionOver(grades, background, $"The background of '{name}'", nameof(background));
        var sorted = contributions.OrderBy(c => c.Parent).ToArray();
        RequireParents(name, [.. sorted.Select(c => c.Parent)], nameof(contributions));
        var masses = Array.ConvertAll(sorted, c => Masses(name, grades, c, nameof(contributions)));
        return Add(name, NodeModel.Graded(leak, ParentsWithGrades(sorted.Select(c => c.Parent)), masses));
    }

    /// <summary>Adds a child with a full table.</summary>
    /// <param name="name">What messages call it.</param>
    /// <param name="grades">Number of grades, 2 to 64.</param>
    /// <param name="parents">Node numbers of the parents, each once.</param>
    /// <param name="probabilities">
    /// Row after row, one row of <paramref name="grades"/> numbers for each combination of the parents' grades, the last parent's grade changing fastest.
    /// </param>
    /// <returns>The node's number.</returns>
    /// <exception cref="ArgumentException">The table has the wrong size, a row is no distribution, or a parent is unknown or named twice.</exception>
    public int AddTable(string name, int grades, IReadOnlyList<int> parents, IReadOnlyList<double> probabilities)
    {
        ArgumentNullException.ThrowIfNull(parents);
        ArgumentNullException.ThrowIfNull(probabilities);
        RequireGrades(name, grades, nameof(grades));
        RequireParents(name, parents, nameof(parents));
        var rows = parents.Aggregate(1L, (product, parent) => checked(product * _nodes[parent].Grades));
        if (probabilities.Count != rows * grades)
        {
            throw new ArgumentException(
                $"The table of '{name}' has {probabilities.Count} numbers; expected {rows * grades}: {rows} combinations of its parents times {grades} grades.",
                nameof(probabilities));
        }

        return Add(name, NodeModel.Table(grades, ParentsWithGrades(parents), GradeMajor(name, grades, (int)rows, [.. probabilities])));
    }

    /// <summary>The network of the nodes added so far.</summary>
    public Network Build() => new([.. _names], [.. _nodes]);

    private int Add(string name, NodeModel node)
    {
        ArgumentNullException.ThrowIfNull(name);
        _names.Add(name);
        _nodes.Add(node);
        return _nodes.Count - 1;
    }

    private ParentAxis[] ParentsWithGrades(IEnumerable<int> parents) => [.. parents.Select(parent => new ParentAxis(parent, _nodes[parent].Grades))];

    private static void RequireGrades(string name, int grades, string parameter)
    {
        if (grades is < 2 or > MostGrades)
        {
            throw new ArgumentException($"'{name}' has {grades} grades; expected 2 to {MostGrades}.", parameter);
        }
    }

    private void RequireParents(string name, IReadOnlyList<int> parents, string parameter)
    {
        var seen = new HashSet<int>();
        foreach (var parent in parents)
        {
            if (parent < 0 || parent >= _nodes.Count)
            {
                throw new ArgumentException(
                    $"'{name}' names the parent {parent}, and {_nodes.Count} nodes are there yet; add parents before children.",
                    parameter);
            }

            if (!seen.Add(parent))
            {
                throw new ArgumentException($"'{name}' names the parent '{_names[parent]}' twice; expected each parent once.", parameter);
            }
        }
    }

    private static double[] DistributionOver(int grades, IReadOnlyList<double> values, string subject, string parameter)
    {
        if (values.Count != grades)
        {
            throw new ArgumentException($"{subject} has {values.Count} numbers; expected {grades}, one per grade.", parameter);
        }

        return Distribution.Normalised([.. values], subject, parameter);
    }

    /// <summary>The contribution as one array, a row of the child's grades per grade of the parent.</summary>
    private double[] Masses(string name, int grades, Contribution contribution, string parameter)
    {
        var parent = _names[contribution.Parent];
        var rows = contribution.ByParentGrade;
        var expected = _nodes[contribution.Parent].Grades;
        if (rows.Length != expected)
        {
            throw new ArgumentException(
                $"The contribution of '{parent}' to '{name}' has {rows.Length} distributions; expected {expected}, one per grade of the parent.",
                parameter);
        }

        var masses = new double[expected * grades];
        for (var grade = 0; grade < expected; grade++)
        {
            var subject = $"The contribution of '{parent}' grade {grade} to '{name}'";
            DistributionOver(grades, rows[grade], subject, parameter).CopyTo(masses, grade * grades);
        }

        if (masses[0] != 1)
        {
            throw new ArgumentException(
                $"The first grade of '{parent}' contributes something to '{name}'; expected all of it on the child's first grade.",
                parameter);
        }

        return masses;
    }

    /// <summary>Rows checked and normalised, then turned so that the child's grade is the slowest axis.</summary>
    private static double[] GradeMajor(string name, int grades, int rows, ReadOnlySpan<double> probabilities)
    {
        var turned = new double[rows * grades];
        for (var row = 0; row < rows; row++)
        {
            var normalised = Distribution.Normalised(probabilities.Slice(row * grades, grades), $"Row {row} of the table of '{name}'", nameof(probabilities));
            for (var grade = 0; grade < grades; grade++)
            {
                turned[(grade * rows) + row] = normalised[grade];
            }
        }

        return turned;
    }
}
