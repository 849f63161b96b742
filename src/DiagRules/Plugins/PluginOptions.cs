namespace DiagRules.Plugins;

/// <summary>How plugins are loaded. The defaults are good.</summary>
public sealed class PluginOptions
{
    /// <summary>
    /// How long one calculation, or the start of a plugin, may run. Default 5 s: a calculation takes microseconds, so that only one
    /// that never ends meets it, even on a machine that has much else to do.
    /// </summary>
    /// <value>More than zero, at most a day.</value>
    public TimeSpan TimeLimit { get; set; } = TimeSpan.FromSeconds(5);

    internal void ThrowIfOutOfRange()
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(TimeLimit, TimeSpan.Zero, nameof(TimeLimit));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(TimeLimit, TimeSpan.FromDays(1), nameof(TimeLimit));
    }
}
