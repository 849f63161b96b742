using DiagRules.Results;

namespace DiagRules.Cli.Asking;

/// <summary>Where a dialogue stands when a question is put.</summary>
/// <param name="Session">The session.</param>
/// <param name="Diagnosis">What it believes.</param>
/// <param name="Step">The step the question belongs to, or <see langword="null"/> when it was asked for by name.</param>
internal sealed record Moment(DiagnosisSession Session, Diagnosis Diagnosis, NextStep? Step)
{
    /// <summary>What the session believes by now, answers given since the question was chosen included.</summary>
    public Diagnosis DiagnosisNow()
    {
        try
        {
            return Session.Diagnose();
        }
        catch (EngineException)
        {
            // The turn that follows the answer says so, and takes it back.
            return Diagnosis;
        }
    }
}
