using DiagRules.Model;

namespace DiagRules;

/// <summary>The library's own few words for people.</summary>
internal static class Words
{
    public static string Of(Skill skill) => skill switch
    {
        Skill.Owner => "the owner",
        Skill.OwnerWithMeter => "an owner with a meter",
        Skill.Workshop => "a workshop",
        _ => "a specialist",
    };

    /// <summary>Whole percent; what is not nothing is never called 0, what is not certain never 100.</summary>
    public static string Percent(double probability) => probability switch
    {
        <= 0 => "0 %",
        < 0.01 => "under 1 %",
        > 0.99 and < 1 => "over 99 %",
        _ => $"{Math.Round(100 * probability):0} %",
    };

    public static string Join(IReadOnlyList<string> parts, string last = "and") => parts.Count switch
    {
        0 => "",
        1 => parts[0],
        _ => $"{string.Join(", ", parts.Take(parts.Count - 1))} {last} {parts[^1]}",
    };

    /// <summary>Grades by name, joined by <c>or</c>.</summary>
    public static string Grades(Graded graded, Model.Conditions.GradeSet grades) =>
        string.Join(" or ", graded.Grades.Where((_, position) => grades.Contains(position)));
}
