using DiagRules.Model.Conditions;

namespace DiagRules.Rules;

/// <summary>
/// Something that speaks for grades of a finding or cause: an observation, or the conclusion of a line. A fact of the rule
/// network, so equality is identity.
/// </summary>
internal sealed class Support(int node, GradeSet grades, RuleLine? line, bool isStrict, bool isWatched)
{
    public int Node { get; } = node;

    public GradeSet Grades { get; } = grades;

    /// <summary>The line that concluded it, or <see langword="null"/> for an observation.</summary>
    public RuleLine? Line { get; } = line;

    /// <summary>Whether it counts where doubtful observations are unknown.</summary>
    public bool IsStrict { get; } = isStrict;

    /// <summary>Whether any line waits for this node, so that the network has to settle it.</summary>
    public bool IsWatched { get; } = isWatched;
}
