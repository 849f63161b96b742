namespace DiagRules.Model;

/// <summary>Who can do a step; each can do what those before can. Also the order of observers.</summary>
public enum Skill
{
    /// <summary>The owner or driver, without a meter.</summary>
    Owner,

    /// <summary>The owner with a multimeter.</summary>
    OwnerWithMeter,

    /// <summary>A general workshop; the default of checks, access and repairs.</summary>
    Workshop,

    /// <summary>A specialist for these machines.</summary>
    Specialist,
}
