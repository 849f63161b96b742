using DiagRules.Model.Calculations;

namespace DiagRules.Plugins;

/// <summary>A plugin that runs.</summary>
internal sealed class LoadedPlugin(
    PluginInfo info, CalculationLibrary library, PluginContext context, PluginGuard guard, IReadOnlyList<GuardedCalculation> calculations)
{
    private PluginContext? _context = context;

    public PluginInfo Info => info;

    public CalculationLibrary Library => library;

    /// <summary>Gone once nothing holds on to the plugin any more.</summary>
    public WeakReference Context { get; } = new(context);

    /// <summary>Lets go of everything of the plugin; the runtime unloads it with one of the next garbage collections.</summary>
    public void Unload()
    {
        guard.Close();
        foreach (var calculation in calculations)
        {
            calculation.LetGo();
        }

        _context?.Unload();
        _context = null;
    }
}
