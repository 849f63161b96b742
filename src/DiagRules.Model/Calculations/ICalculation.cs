using DiagRules.Model.Quantities;

namespace DiagRules.Model.Calculations;

/// <summary>A named calculation that conditions may call. Implementations are immutable and thread-safe.</summary>
/// <remarks>
/// The function is total: for arguments it has no answer for it returns a reason, it does not throw. A calculation that
/// throws all the same, or returns something that is not finite, makes the reading that called it unknown and is reported
/// (<see cref="Containment"/>); nothing else is harmed. It depends on its arguments alone: no clock, no files, no state.
/// </remarks>
public interface ICalculation
{
    /// <summary>What a pack and a reader need to know about it.</summary>
    CalculationDescription Description { get; }

    /// <summary>Computes the result.</summary>
    /// <param name="arguments">One value per parameter, in the coherent SI unit, in the order of the description; finite.</param>
    CalculationResult Compute(ReadOnlySpan<double> arguments);
}
