using DiagRules.Model.Calculations;

namespace DiagRules.Plugins;

/// <summary>
/// Runs the calculations of one plugin on a thread of their own, one at a time, and gives the thread up when one runs too long.
/// Thread-safe.
/// </summary>
/// <remarks>
/// .NET cannot stop a thread from outside. So a calculation that never ends is left running on its background thread, which takes a
/// processor's time until the process ends, and the whole plugin is switched off: it answers nothing from then on. The caller waits
/// no longer than the limit, once. A call that goes well allocates nothing; handing it over takes some tens of microseconds.
/// </remarks>
internal sealed class PluginGuard(string plugin, TimeSpan limit)
{
    private readonly Lock _calls = new();
    private GuardThread? _thread;
    private volatile string? _refusal;

    /// <summary>Why nothing is computed any more.</summary>
    public CalculationResult Refusal => CalculationResult.Failed(_refusal ?? Unloaded);

    private string Unloaded => $"plugin '{plugin}' is unloaded";

    public CalculationResult Compute(ICalculation calculation, string name, ReadOnlySpan<double> arguments)
    {
        lock (_calls)
        {
            if (_refusal is not null)
            {
                return Refusal;
            }

            _thread ??= GuardThread.Start(plugin);
            if (_thread.Compute(calculation, arguments, limit) is { } result)
            {
                return result;
            }

            _thread = null;
            _refusal = $"plugin '{plugin}' is switched off since '{name}' ran longer than {LimitWords.Of(limit)}";
            return Refusal;
        }
    }

    /// <summary>Ends the thread; nothing is computed any more.</summary>
    public void Close()
    {
        lock (_calls)
        {
            _refusal ??= Unloaded;
            _thread?.End();
            _thread = null;
        }
    }
}
