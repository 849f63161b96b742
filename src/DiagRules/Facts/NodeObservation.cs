using DiagRules.Model.Conditions;

namespace DiagRules.Facts;

/// <summary>What was plainly observed of a finding or cause.</summary>
/// <param name="Grades">The grades left open.</param>
/// <param name="Trust">How far it is believed, 0..1.</param>
/// <param name="From">Where it comes from, one of the constants.</param>
internal sealed record NodeObservation(GradeSet Grades, double Trust, string From)
{
    public const string Observation = "observation";
    public const string Complaint = "complaint";
    public const string Working = "observed while it worked";
    public const string Readings = "readings";
}
