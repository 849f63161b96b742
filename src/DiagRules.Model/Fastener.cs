using DiagRules.Model.Quantities;

namespace DiagRules.Model;

/// <summary>A fastener of a repair. Immutable.</summary>
/// <param name="At">Where, and what it is.</param>
/// <param name="AcrossFlats">Spanner size, or <see langword="null"/>.</param>
/// <param name="Torque">Tightening torque, or <see langword="null"/>.</param>
public sealed record Fastener(string At, Quantity? AcrossFlats, Quantity? Torque);
