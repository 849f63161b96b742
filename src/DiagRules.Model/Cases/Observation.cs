using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;

namespace DiagRules.Model.Cases;

/// <summary>What somebody saw, measured or tried. Immutable.</summary>
/// <param name="Id">Id of the reading, finding or cause, or of the repair that was tried.</param>
/// <param name="Value">What came out.</param>
public sealed record Observation(string Id, ObservedValue Value)
{
    /// <summary>Trust of an observation marked <c>doubtful</c>.</summary>
    public const double Doubtful = 0.6;

    /// <summary>Below this an observation is unknown to what settles, rules out or decides a precondition.</summary>
    public const double RuleThreshold = 0.8;

    /// <summary>Who: one of the skills as a word, or <see langword="null"/> for nobody in particular (hard).</summary>
    public Skill? By { get; init; }

    /// <summary>How far it is believed, 0..1; <see langword="null"/> for the observer's own trust.</summary>
    public double? Trust { get; init; }

    /// <summary>Whether the machine worked at that moment; it is taken as failing otherwise.</summary>
    public bool WhileWorking { get; init; }

    /// <summary>When: an ISO 8601 date or time as written, or <see langword="null"/>.</summary>
    public string? At { get; init; }

    /// <summary>A remark, or <see langword="null"/>.</summary>
    public string? Note { get; init; }

    /// <summary>Where it is written, in a recorded case; "no particular place" otherwise.</summary>
    public SourcePlace Place { get; init; }

    /// <summary>Whether both say the same; where they are written plays no part.</summary>
    public bool Equals(Observation? other) =>
        other is not null && Id == other.Id && Value == other.Value && By == other.By && Trust.Equals(other.Trust)
        && WhileWorking == other.WhileWorking && At == other.At && Note == other.Note;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Id, Value, By, Trust, WhileWorking, At, Note);
}

/// <summary>What an observation says. Immutable.</summary>
public abstract record ObservedValue;

/// <summary>A measured value; an infinity means beyond the meter's range on that side.</summary>
/// <param name="Quantity">Value and unit as written.</param>
public sealed record Measured(Quantity Quantity) : ObservedValue;

/// <summary>A grade, or several left open.</summary>
/// <param name="Grades">The grades still possible.</param>
public sealed record Seen(GradeSet Grades) : ObservedValue;

/// <summary>Asked, no answer.</summary>
public sealed record CannotTell : ObservedValue;

/// <summary>A repair was tried.</summary>
/// <param name="Result">What came of it.</param>
public sealed record Tried(TriedResult Result) : ObservedValue;

/// <summary>What came of a repair.</summary>
public enum TriedResult
{
    /// <summary>The complaint stayed.</summary>
    NoChange,

    /// <summary>It was well for some time; kept on record, weighed nothing.</summary>
    ForAWhile,

    /// <summary>The complaint is gone.</summary>
    Cured,
}
