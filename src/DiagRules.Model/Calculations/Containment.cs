namespace DiagRules.Model.Calculations;

/// <summary>Keeps what goes wrong inside a calculation from harming anything else. Thread-safe.</summary>
public static class Containment
{
    private const int LongestDetail = 200;

    /// <summary>Computes, and turns an exception or a number that is not finite into a failed result.</summary>
    /// <remarks>
    /// How long it runs is not limited here: nothing can stop a thread from outside. Calculations of plugin folders run on a thread that
    /// can be abandoned. What ends the whole process (a stack that overflows, memory that runs out) no program can contain within itself.
    /// </remarks>
    /// <param name="calculation">The calculation.</param>
    /// <param name="arguments">One value per parameter, in the coherent SI unit.</param>
    public static CalculationResult ComputeContained(this ICalculation calculation, ReadOnlySpan<double> arguments)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        try
        {
            var result = calculation.Compute(arguments);
            return !result.IsComputed || double.IsFinite(result.Value) ? result : CalculationResult.Failed(NotFinite(result.Value));
        }
#pragma warning disable CA1031 // The contract of a pack: whatever a calculation throws, its reading is unknown and nothing else is harmed.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            return CalculationResult.Failed(Describe(exception));
        }
    }

    /// <summary>Completes "because ..." for something that was thrown: kind and first line, cut where it grows long.</summary>
    public static string Describe(Exception exception)
    {
        ArgumentNullException.ThrowIfNull(exception);
        var detail = MessageOf(exception).Split('\n')[0].Trim();
        detail = detail.Length > LongestDetail ? detail[..LongestDetail] + "..." : detail;
        return $"it threw {exception.GetType().Name}{(detail.Length == 0 ? "" : ": " + detail)}";
    }

    /// <summary>The message is code of the plugin too.</summary>
    private static string MessageOf(Exception exception)
    {
        try
        {
            return exception.Message ?? "";
        }
#pragma warning disable CA1031 // What throws while it says why it threw has said enough.
        catch (Exception)
#pragma warning restore CA1031
        {
            return "";
        }
    }

    private static string NotFinite(double value) =>
        double.IsNaN(value) ? "what it gave is not a number" : value > 0 ? "it gave infinity" : "it gave minus infinity";
}
