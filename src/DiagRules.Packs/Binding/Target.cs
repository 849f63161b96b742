using System.Collections.Immutable;

namespace DiagRules.Packs.Binding;

/// <summary>What may be named at some place: the sections, and what messages call it.</summary>
/// <param name="Noun">With its article where a sentence needs one: <c>check</c>.</param>
/// <param name="Sections">Sections it may be in.</param>
internal sealed record Target(string Noun, ImmutableArray<string> Sections)
{
    public static readonly Target Reading = new("reading", [Section.Readings]);
    public static readonly Target Finding = new("finding", [Section.Findings]);
    public static readonly Target Cause = new("cause or precondition", [Section.Causes, Section.Preconditions]);
    public static readonly Target Graded = new("cause, effect or finding", [Section.Causes, Section.Preconditions, Section.Effects, Section.Findings]);
    public static readonly Target Child = new("finding or effect", [Section.Findings, Section.Effects]);
    public static readonly Target Observable = new("finding or cause", [Section.Findings, Section.Causes, Section.Preconditions]);
    public static readonly Target Given = new("reading, finding or cause", [Section.Readings, Section.Findings, Section.Causes, Section.Preconditions]);
    public static readonly Target Altered = new("finding or reading", [Section.Findings, Section.Readings]);
    /// <summary>Anything; the reader says itself what does not fit, since the problem has a code of its own.</summary>
    public static readonly Target AnyEntry = new("finding or effect", Section.All);

    /// <summary>Anything, where a finding is expected; see <see cref="AnyEntry"/>.</summary>
    public static readonly Target AnyFinding = new("finding", Section.All);

    public static readonly Target Hazard = new("hazard", [Section.Hazards]);
    public static readonly Target Access = new("access state", [Section.Access]);
    public static readonly Target Complaint = new("complaint", [Section.Complaints]);

    /// <summary>Questions of findings count as checks, by the finding's id.</summary>
    public static readonly Target Check = new("check", [Section.Checks]) { TakesQuestions = true };

    /// <summary>What restores a precondition counts as a repair, by the precondition's id.</summary>
    public static readonly Target Repair = new("repair", [Section.Repairs]) { TakesRestores = true };

    /// <summary>Entries of <c>repairs</c> alone.</summary>
    public static readonly Target ListedRepair = new("repair", [Section.Repairs]);

    public static readonly Target Step = new("check or repair", [Section.Checks, Section.Repairs]) { TakesQuestions = true, TakesRestores = true };

    public bool TakesQuestions { get; init; }

    public bool TakesRestores { get; init; }

    public bool Fits(Declared declared) =>
        Sections.Contains(declared.Section, StringComparer.Ordinal)
        || (TakesQuestions && declared.IsAsked)
        || (TakesRestores && declared.IsRestored);
}
