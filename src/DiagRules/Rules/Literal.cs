using DiagRules.Model.Conditions;

namespace DiagRules.Rules;

/// <summary>A test on a concluded finding or cause that the rule network makes: known at one of these grades, or unknown.</summary>
/// <param name="Node">Node of the finding or cause.</param>
/// <param name="Grades">Grades for which it holds; not looked at when it asks for unknown.</param>
/// <param name="WantsUnknown">Whether it holds as long as nothing is known.</param>
internal readonly record struct Literal(int Node, GradeSet Grades, bool WantsUnknown)
{
    /// <summary>Whether a settled state answers this literal's question with yes; for <c>unknown</c> it is the one that must not be there.</summary>
    public bool Matches(Settled settled) => settled.Node == Node && (WantsUnknown || settled.Grades.IsSubsetOf(Grades));
}
