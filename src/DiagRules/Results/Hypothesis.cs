using System.Collections.Immutable;

namespace DiagRules.Results;

/// <summary>A cause or precondition and how far it is believed. Immutable.</summary>
/// <param name="Cause">Id.</param>
/// <param name="Title">Title.</param>
/// <param name="Confidence">Probability 0..1 that this is what brought the machine in; exactly 0 when ruled out.</param>
/// <param name="Repairs">Repairs that cure it, by id.</param>
public sealed record Hypothesis(string Cause, string Title, double Confidence, ImmutableArray<string> Repairs)
{
    /// <summary>Whether it is a precondition rather than a fault.</summary>
    public bool IsPrecondition { get; init; }
}
