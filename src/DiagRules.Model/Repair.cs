using System.Collections.Immutable;

namespace DiagRules.Model;

/// <summary>Something that puts causes right. Immutable.</summary>
public sealed record Repair : WorkStep
{
    /// <summary>Checks that must be done before this repair is offered, by id.</summary>
    public ImmutableArray<string> After { get; init; } = [];

    /// <summary>Parts.</summary>
    public ImmutableArray<string> Parts { get; init; } = [];

    /// <summary>Fasteners with their torque.</summary>
    public ImmutableArray<Fastener> Fasteners { get; init; } = [];

    /// <summary>How it is proved.</summary>
    public ImmutableArray<Verification> VerifyBy { get; init; } = [];

    /// <summary>Whether it is the <c>restore</c> of a precondition rather than an entry of <c>repairs</c>; it has the precondition's id.</summary>
    public bool IsRestore { get; init; }
}
