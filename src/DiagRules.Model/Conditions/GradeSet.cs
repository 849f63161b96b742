using System.Numerics;

namespace DiagRules.Model.Conditions;

/// <summary>A set of grades of one finding, at most eight, by position. Immutable value; the default is empty.</summary>
/// <remarks>As a state of knowledge the set holds the grades still open: empty means unknown, one grade means settled.</remarks>
/// <param name="Bits">Bit <c>g</c> is set when grade <c>g</c> is in the set.</param>
public readonly record struct GradeSet(byte Bits)
{
    /// <summary>No grade: unknown.</summary>
    public static GradeSet None => default;

    /// <summary>Whether nothing is in it.</summary>
    public bool IsEmpty => Bits == 0;

    /// <summary>How many grades are in it.</summary>
    public int Count => BitOperations.PopCount(Bits);

    /// <summary>Whether exactly one grade is in it.</summary>
    public bool IsSingle => BitOperations.IsPow2((uint)Bits);

    /// <summary>The first (healthiest) grade in it; undefined when empty.</summary>
    public int First => BitOperations.TrailingZeroCount(Bits);

    /// <summary>The last (worst) grade in it; undefined when empty.</summary>
    public int Last => 31 - BitOperations.LeadingZeroCount(Bits);

    /// <summary>A set of one grade.</summary>
    public static GradeSet Of(int grade) => new((byte)(1 << grade));

    /// <summary>The first <paramref name="count"/> grades.</summary>
    public static GradeSet All(int count) => new((byte)((1 << count) - 1));

    /// <summary>Grade <paramref name="grade"/> and all later ones of <paramref name="count"/>.</summary>
    public static GradeSet OrWorse(int grade, int count) => new((byte)(All(count).Bits & ~((1 << grade) - 1)));

    /// <summary>Grade <paramref name="grade"/> and all earlier ones.</summary>
    public static GradeSet OrBetter(int grade) => All(grade + 1);

    /// <summary>Whether a grade is in it.</summary>
    public bool Contains(int grade) => (Bits >> grade & 1) != 0;

    /// <summary>Whether all its grades are in <paramref name="other"/>.</summary>
    public bool IsSubsetOf(GradeSet other) => (Bits & ~other.Bits) == 0;

    /// <summary>Whether the two share a grade.</summary>
    public bool Overlaps(GradeSet other) => (Bits & other.Bits) != 0;

    /// <summary>Grades in either.</summary>
    public static GradeSet operator |(GradeSet left, GradeSet right) => new((byte)(left.Bits | right.Bits));

    /// <summary>Grades in both.</summary>
    public static GradeSet operator &(GradeSet left, GradeSet right) => new((byte)(left.Bits & right.Bits));

    /// <summary>The grades of <paramref name="count"/> that are not in it.</summary>
    public GradeSet ComplementIn(int count) => new((byte)(All(count).Bits & ~Bits));
}
