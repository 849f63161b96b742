using System.Collections.Immutable;

namespace DiagRules.Results;

/// <summary>Why a cause stands where it stands. Immutable.</summary>
/// <param name="Cause">Id.</param>
/// <param name="Title">Title.</param>
/// <param name="Prior">Confidence before anything was observed, 0..1.</param>
/// <param name="Confidence">Confidence now, 0..1.</param>
/// <param name="Weights">What each observation does, strongest first.</param>
/// <param name="RuledOutBy">Rules, preconditions or observations that rule it out, or empty.</param>
public sealed record CauseExplanation(
    string Cause, string Title, double Prior, double Confidence, ImmutableArray<EvidenceWeight> Weights, ImmutableArray<string> RuledOutBy);

/// <summary>What one observation does for or against a cause. Immutable.</summary>
/// <param name="Finding">Id of the finding.</param>
/// <param name="Title">Title of the finding.</param>
/// <param name="Grade">The grade seen.</param>
/// <param name="Decibans">
/// Weight of evidence in decibans (I. J. Good, Probability and the Weighing of Evidence, 1950): <c>10 log10</c> of how much more likely the
/// grade is with the cause than without, given all the others. 10 makes the odds ten times better; an infinity proves or excludes.
/// </param>
public sealed record EvidenceWeight(string Finding, string Title, string Grade, double Decibans);
