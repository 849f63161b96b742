using DiagRules.Model;

namespace DiagRules;

/// <summary>How one job begins. The defaults are good.</summary>
public sealed class SessionOptions
{
    /// <summary>Id of the complaint, or <see langword="null"/>.</summary>
    public string? Complaint { get; set; }

    /// <summary>Who works on the machine; <see langword="null"/> assumes nobody and offers every step with the skill it needs.</summary>
    public Skill? Skill { get; set; }

    /// <summary>Tools at hand; <see langword="null"/> assumes all.</summary>
    public IReadOnlyCollection<string>? Tools { get; set; }

    /// <summary>How many next steps a diagnosis lists. Default 5; 0 or less lists all.</summary>
    public int Steps { get; set; } = 5;

    internal SessionOptions With(string? complaint) => new() { Complaint = complaint, Skill = Skill, Tools = Tools, Steps = Steps };

    internal bool AsksTheSameAs(SessionOptions other) =>
        Skill == other.Skill && Steps == other.Steps && ReferenceEquals(Tools, other.Tools);
}
