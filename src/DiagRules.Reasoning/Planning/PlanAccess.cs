namespace DiagRules.Reasoning.Planning;

/// <summary>A state of the machine that checks and repairs need: a trim off, a supply isolated.</summary>
/// <remarks>
/// Opening is paid once and the access stays open until one that excludes it is opened. What it needs must be open while it is being opened,
/// not for ever after: a cover taken off with the supply isolated stays off when the supply is switched on again.
/// </remarks>
public sealed record PlanAccess
{
    /// <summary>What opening it costs, without what it needs. Finite, 0 or more, in the unit of all costs of the situation.</summary>
    public required double Cost { get; init; }

    /// <summary>Accesses (indices) that must be open for opening this one. None by default; circles are refused.</summary>
    public IReadOnlyList<int> Needs { get; init; } = [];

    /// <summary>Accesses (indices) that this one closes when it is opened, and that close this one. Naming it on one side is enough.</summary>
    public IReadOnlyList<int> Excludes { get; init; } = [];

    /// <summary>Whether it is open already. False by default.</summary>
    public bool IsOpen { get; init; }
}
