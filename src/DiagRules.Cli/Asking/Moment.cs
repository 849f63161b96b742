using DiagRules.Results;

namespace DiagRules.Cli.Asking;

/// <summary>Where a dialogue stands when a question is put.</summary>
/// <param name="Session">The session.</param>
/// <param name="Diagnosis">What it believes.</param>
/// <param name="Step">The step the question belongs to, or <see langword="null"/> when it was asked for by name.</param>
internal sealed record Moment(DiagnosisSession Session, Diagnosis Diagnosis, NextStep? Step);
