using DiagRules.Model.Calculations;

namespace DiagRules.Plugins;

/// <summary>A plugin's calculation as packs see it: it runs behind the plugin's guard, and lets go of the plugin when that is unloaded.</summary>
/// <remarks>Its description is made of types of the host alone, so that a pack which outlives the plugin does not keep it in memory.</remarks>
internal sealed class GuardedCalculation : ICalculation
{
    private readonly PluginGuard _guard;
    private volatile ICalculation? _inner;

    public GuardedCalculation(PluginGuard guard, ICalculation inner)
    {
        _guard = guard;
        _inner = inner;
        Description = inner.Description ?? throw new InvalidOperationException($"'{inner.GetType().FullName}' has no description");
    }

    public CalculationDescription Description { get; }

    public CalculationResult Compute(ReadOnlySpan<double> arguments) =>
        _inner is { } inner ? _guard.Compute(inner, Description.Name, arguments) : _guard.Refusal;

    /// <summary>Forgets the plugin.</summary>
    public void LetGo() => _inner = null;
}
