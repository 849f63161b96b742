namespace DiagRules.Testability;

/// <summary>What counts as showing a cause. The defaults are good.</summary>
public sealed class TestabilityOptions
{
    /// <summary>
    /// How surely a check must show something abnormal for it to count: it detects a cause when some abnormal grade of a finding it decides, or a later one,
    /// is at least so likely under the cause, and at most one minus that on a machine without any fault (and less likely than under the cause).
    /// </summary>
    /// <value>Default 0.5; 0.5..1.</value>
    public double Detection { get; set; } = 0.5;

    /// <summary>How many minimal check sets are kept while the smallest are looked for.</summary>
    /// <value>Default 200; at least 1.</value>
    public int CheckSets { get; set; } = 200;

    internal void ThrowIfOutOfRange()
    {
        if (!(Detection is >= 0.5 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(Detection), Detection, "How surely a check must show a cause lies within 0.5..1.");
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(CheckSets, 1);
    }
}
