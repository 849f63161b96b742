using System.Collections.Immutable;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;

namespace DiagRules.Model;

/// <summary>A graded state that is observed, read from measurements or settled by rules. Immutable.</summary>
public sealed record Finding : Consequence
{
    /// <summary>Id of the built-in finding that says whether the fault comes and goes.</summary>
    public const string Pattern = "pattern";

    /// <summary>What to ask, or <see langword="null"/> when nobody is asked.</summary>
    public string? Question { get; init; }

    /// <summary>Whether it can be judged though the fault does not show itself at that moment.</summary>
    public bool IsLasting { get; init; }

    /// <summary>Grades by the value of one reading, or <see langword="null"/>.</summary>
    public Bands? Bands { get; init; }

    /// <summary>Grades by conditions on readings and findings.</summary>
    public ImmutableArray<ReadGrade> Reads { get; init; } = [];
}

/// <summary><c>read</c>: the grade that a condition settles.</summary>
/// <param name="Grade">Position of the grade.</param>
/// <param name="When">The condition.</param>
public sealed record ReadGrade(int Grade, Condition When);

/// <summary>
/// <c>bands</c>: the grade by the value of a reading. <c>Grades[0]</c> up to and including <c>Limits[0]</c>, then
/// <c>Grades[1]</c> and so on; a value on a limit takes the earlier grade <em>of the finding's order</em>.
/// </summary>
/// <param name="Of">The reading.</param>
/// <param name="Grades">Positions of the grades in rising value; one more than limits; a grade may stand twice.</param>
/// <param name="Limits">Literals or parameters, rising.</param>
/// <param name="If">When the bands count at all, or <see langword="null"/> for always.</param>
/// <param name="Place">Where it is written.</param>
public sealed record Bands(Reading Of, ImmutableArray<int> Grades, ImmutableArray<Term> Limits, Condition? If, SourcePlace Place);
