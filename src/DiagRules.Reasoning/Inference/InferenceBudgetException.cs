using System.Globalization;

namespace DiagRules.Reasoning.Inference;

/// <summary>A question would need larger tables than the host allows. Raised before any table is made.</summary>
public sealed class InferenceBudgetException : Exception
{
    /// <summary>Says what was needed and what was allowed.</summary>
    public InferenceBudgetException(InferenceEstimate estimate, long allowedCells)
        : base(Describe(estimate, allowedCells))
    {
        Estimate = estimate;
        AllowedCells = allowedCells;
    }

    /// <summary>What the question would cost.</summary>
    public InferenceEstimate Estimate { get; }

    /// <summary>The value of <see cref="InferenceLimits.TableCells"/>.</summary>
    public long AllowedCells { get; }

    private static string Describe(InferenceEstimate estimate, long allowedCells)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        var need = string.Create(CultureInfo.InvariantCulture, $"{(estimate.IsLowerBound ? "more than " : "")}{estimate.TableCells:G4}");
        return $"These observations need {need} table cells (the widest table joins {estimate.WidestTable} nodes); "
            + $"'{nameof(InferenceLimits)}.{nameof(InferenceLimits.TableCells)}' allows {allowedCells}. "
            + "Raise it, withdraw some of the observations that are not at their first grade, or give the network fewer parents per node.";
    }
}
