using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Packs.Observations;

namespace DiagRules.Cli.Inputs;

/// <summary>
/// A fact as people write it: an id, and a value that may be followed by <c>, doubtful</c> (believed less) and <c>, working</c> (seen
/// while the machine worked).
/// </summary>
/// <param name="Value">The value alone.</param>
/// <param name="IsDoubtful">Whether the observer is not sure.</param>
/// <param name="IsWhileWorking">Whether the machine worked at that moment.</param>
internal readonly record struct Fact(string Value, bool IsDoubtful, bool IsWhileWorking)
{
    private const string Doubtful = ", doubtful";
    private const string Working = ", working";

    /// <summary>Parts the value from what is said about it.</summary>
    public static Fact Read(string text)
    {
        var fact = new Fact(text.Trim(), false, false);
        while (true)
        {
            if (!fact.IsDoubtful && fact.Value.EndsWith(Doubtful, StringComparison.OrdinalIgnoreCase))
            {
                fact = fact with { Value = fact.Value[..^Doubtful.Length].TrimEnd(), IsDoubtful = true };
            }
            else if (!fact.IsWhileWorking && fact.Value.EndsWith(Working, StringComparison.OrdinalIgnoreCase))
            {
                fact = fact with { Value = fact.Value[..^Working.Length].TrimEnd(), IsWhileWorking = true };
            }
            else
            {
                return fact;
            }
        }
    }

    /// <summary>Puts the fact on record.</summary>
    public ObserveResult Observe(DiagnosisSession session, string id, Skill? by = null)
    {
        var read = new ObservationReader(session.Engine.Pack).Read(id, Value);
        return read.Observation is { } observation
            ? session.Observe(observation with
            {
                By = by,
                Trust = IsDoubtful ? Observation.Doubtful : null,
                WhileWorking = IsWhileWorking,
            })
            : new ObserveResult(IsAccepted: false, IsUsed: false, read.Problem);
    }

    /// <summary>The fact as it is written.</summary>
    public override string ToString() => Value + (IsDoubtful ? Doubtful : "") + (IsWhileWorking ? Working : "");
}
