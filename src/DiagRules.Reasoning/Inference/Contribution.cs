namespace DiagRules.Reasoning.Inference;

/// <summary>What one parent adds to a graded child: for each grade of the parent, how probable each grade of the child is on its account alone.</summary>
/// <remarks>
/// The child takes the latest grade that any contribution, or the background, produces (noisy-MAX; Henrion 1989, Díez 1993). The numbers are <em>net</em>:
/// what this parent does by itself, without the background mixed in. Immutable and thread-safe.
/// </remarks>
public sealed class Contribution
{
    private Contribution(int parent, double[][] byParentGrade)
    {
        Parent = parent;
        ByParentGrade = byParentGrade;
    }

    /// <summary>Node number of the parent.</summary>
    public int Parent { get; }

    /// <summary>One distribution over the child's grades for each grade of the parent, first grade first.</summary>
    internal double[][] ByParentGrade { get; }

    /// <summary>A contribution given as full distributions.</summary>
    /// <param name="parent">Node number of the parent.</param>
    /// <param name="byParentGrade">
    /// One distribution over the child's grades per grade of the parent. The first must put everything on the child's first grade.
    /// </param>
    /// <exception cref="ArgumentNullException">An argument or one of the distributions is null.</exception>
    public static Contribution Of(int parent, params IReadOnlyList<double>[] byParentGrade)
    {
        ArgumentNullException.ThrowIfNull(byParentGrade);
        var copies = new double[byParentGrade.Length][];
        for (var grade = 0; grade < copies.Length; grade++)
        {
            ArgumentNullException.ThrowIfNull(byParentGrade[grade], nameof(byParentGrade));
            copies[grade] = [.. byParentGrade[grade]];
        }

        return new Contribution(parent, copies);
    }

    /// <summary>A contribution given by the child's later grades only; what they leave over goes to the first grade.</summary>
    /// <param name="parent">Node number of the parent.</param>
    /// <param name="abnormal">
    /// For each grade of the parent from its second on, the probabilities of the child's second and later grades.
    /// </param>
    /// <exception cref="ArgumentException">The probabilities of one parent grade add up to more than 1.</exception>
    public static Contribution OfLaterGrades(int parent, params IReadOnlyList<double>[] abnormal)
    {
        ArgumentNullException.ThrowIfNull(abnormal);
        if (abnormal.Length == 0)
        {
            throw new ArgumentException(
                $"The contribution of node {parent} has no distribution; expected one per grade of the parent from its second on.",
                nameof(abnormal));
        }

        var full = new double[abnormal.Length + 1][];
        full[0] = new double[abnormal[0].Count + 1];
        full[0][0] = 1;
        for (var grade = 0; grade < abnormal.Length; grade++)
        {
            full[grade + 1] = Distribution.WithRest(abnormal[grade]);
        }

        return new Contribution(parent, full);
    }
}
