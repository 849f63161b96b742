namespace DiagRules;

/// <summary>How a pack is compiled. The defaults are good.</summary>
public sealed class EngineOptions
{
    /// <summary>Chassis code; <see langword="null"/> takes the pack's only or first one.</summary>
    public string? Chassis { get; set; }

    /// <summary>The host's own labour rate per hour, in the pack's currency; <see langword="null"/> takes the pack's.</summary>
    public double? LabourPerHour { get; set; }

    /// <summary>From which confidence on a cause's own hazards are shown, 0..1. Default 0.05.</summary>
    public double HazardConfidence { get; set; } = 0.05;

    /// <summary>From which probability on a further cause is shown as also present, 0..1. Default 0.2.</summary>
    public double AlsoPresentFrom { get; set; } = 0.2;
}
