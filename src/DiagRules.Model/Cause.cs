using System.Collections.Immutable;
using DiagRules.Model.Conditions;

namespace DiagRules.Model;

/// <summary>A root cause, or an interlock precondition that is not met. Immutable.</summary>
public sealed record Cause : Graded
{
    /// <summary>The two grades of every cause.</summary>
    public static readonly ImmutableArray<string> AbsentPresent = ["absent", "present"];

    /// <summary>Relative frequency among complaints; <see langword="null"/> in packs with absolute probabilities.</summary>
    public double? Share { get; init; }

    /// <summary>Absolute probability; <see langword="null"/> in packs with shares.</summary>
    public double? Probability { get; init; }

    /// <summary>Word of <c>systems</c>, or <see langword="null"/>.</summary>
    public string? System { get; init; }

    /// <summary>Repairs that cure it, each with how surely.</summary>
    public ImmutableArray<Cure> Repairs { get; init; } = [];

    /// <summary>Hazards shown as soon as this cause is a serious possibility, by id.</summary>
    public ImmutableArray<string> Hazards { get; init; } = [];

    /// <summary>Why this happens, or how it looks; <see langword="null"/> when not stated.</summary>
    public string? Reason { get; init; }

    /// <summary>What makes it a precondition; <see langword="null"/> for an ordinary cause.</summary>
    public Precondition? Precondition { get; init; }
}

/// <summary>A repair and how surely it cures a cause.</summary>
/// <param name="Repair">Id of the repair.</param>
/// <param name="Probability">0..1.</param>
public readonly record struct Cure(string Repair, double Probability);

/// <summary>What the machine demands before it moves.</summary>
/// <param name="Must">Certainly true: met, so ruled out. Certainly false: not met, so present. Unknown: open.</param>
/// <param name="Restore">What puts it right, or <see langword="null"/>.</param>
/// <param name="IfNot">What the machine does while it is not met, or <see langword="null"/>.</param>
public sealed record Precondition(Condition Must, string? Restore, string? IfNot);
