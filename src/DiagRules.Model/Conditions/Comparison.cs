using System.Collections.Immutable;
using DiagRules.Model.Problems;

namespace DiagRules.Model.Conditions;

/// <summary>Which way a comparison runs.</summary>
public enum Comparator
{
    /// <summary><c>&lt;</c></summary>
    Less,

    /// <summary><c>&lt;=</c></summary>
    LessOrEqual,

    /// <summary><c>&gt;</c></summary>
    Greater,

    /// <summary><c>&gt;=</c></summary>
    GreaterOrEqual,

    /// <summary><c>=</c>, counts only.</summary>
    Equal,

    /// <summary><c>!=</c>, counts only.</summary>
    NotEqual,
}

/// <summary>Two numbers compared. A chain <c>a &lt;= x &lt; b</c> is two of these.</summary>
/// <remarks>
/// Where the readings behind it state an accuracy, the comparison is certain only when the difference of the two sides is
/// more than <see cref="CoverageFactor"/> of its standard uncertainties away from zero. That uncertainty is carried to first
/// order through everything between the readings and the comparison, correlations included (JCGM 100:2008, 5.1.2).
/// </remarks>
public sealed record Comparison : Condition
{
    /// <summary>How many standard uncertainties make a comparison certain (JCGM 100:2008, 6.2: k = 2, about 95 %).</summary>
    public const double CoverageFactor = 2;

    private readonly int[] _bases;

    /// <summary>Makes a comparison of two terms of the same type.</summary>
    /// <param name="left">Left side.</param>
    /// <param name="comparator">Which way.</param>
    /// <param name="right">Right side.</param>
    /// <param name="text">Text of this part.</param>
    /// <param name="place">Where it is written.</param>
    public Comparison(Term left, Comparator comparator, Term right, string text, SourcePlace place)
        : base(text, place)
    {
        ArgumentNullException.ThrowIfNull(left);
        ArgumentNullException.ThrowIfNull(right);
        Left = left;
        Comparator = comparator;
        Right = right;
        var bases = new SortedSet<int>();
        left.CollectBases(bases);
        right.CollectBases(bases);
        _bases = [.. bases];
    }

    /// <summary>Left side.</summary>
    public Term Left { get; }

    /// <summary>Which way it runs.</summary>
    public Comparator Comparator { get; }

    /// <summary>Right side.</summary>
    public Term Right { get; }

    /// <summary>The measured readings it rests on, through derived ones too, by index.</summary>
    public ImmutableArray<int> Bases => System.Runtime.InteropServices.ImmutableCollectionsMarshal.AsImmutableArray(_bases);

    /// <inheritdoc/>
    public override Truth Evaluate(IFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var left = Left.Evaluate(facts).Value;
        var right = Right.Evaluate(facts).Value;
        if (double.IsNaN(left) || double.IsNaN(right) || (double.IsInfinity(left) && double.IsInfinity(right)))
        {
            return Truth.Unknown;
        }

        var sharp = Holds(left, right);
        if (double.IsInfinity(left) || double.IsInfinity(right))
        {
            return sharp ? Truth.True : Truth.False;
        }

        // Put so that a spread which does not compute (slopes of opposite infinity) leaves the answer open.
        var spread = Spread(facts);
        var isCertain = spread == 0 || Math.Abs(left - right) > CoverageFactor * spread;
        return !isCertain ? Truth.Unknown : sharp ? Truth.True : Truth.False;
    }

    /// <summary>Standard uncertainty of left minus right, in SI; 0 when no reading behind it states an accuracy.</summary>
    public double Spread(IFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        double variance = 0;
        foreach (var reading in _bases)
        {
            var uncertainty = facts.Uncertainty(reading);
            if (uncertainty > 0)
            {
                var rate = Left.Evaluate(facts, reading).Rate - Right.Evaluate(facts, reading).Rate;
                variance += rate * rate * uncertainty * uncertainty;
            }
        }

        return Math.Sqrt(variance);
    }

    /// <summary>Whether it holds for two sharp numbers.</summary>
    public bool Holds(double left, double right) => Comparator switch
    {
        Comparator.Less => left < right,
        Comparator.LessOrEqual => left <= right,
        Comparator.Greater => left > right,
        Comparator.GreaterOrEqual => left >= right,
        Comparator.Equal => left == right,
        _ => left != right,
    };
}
