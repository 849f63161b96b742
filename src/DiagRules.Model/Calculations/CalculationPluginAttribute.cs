namespace DiagRules.Model.Calculations;

/// <summary>Marks an assembly as a plugin: a library of calculations that packs ask for by name and version.</summary>
/// <remarks>Name and version are read from the assembly's metadata, without loading it.</remarks>
/// <param name="name">Kebab-case name, as packs write it in <c>calculations:</c>.</param>
/// <param name="version">Version, three numbers: <c>1.2.0</c>.</param>
/// <param name="source">The class that makes the calculations; it implements <see cref="ICalculationSource"/>.</param>
/// <example>
/// <code>
/// [assembly: CalculationPlugin("gas-springs", "1.0.0", typeof(GasSpringCalculations))]
/// </code>
/// </example>
[AttributeUsage(AttributeTargets.Assembly)]
public sealed class CalculationPluginAttribute(string name, string version, Type source) : Attribute
{
    /// <summary>Kebab-case name.</summary>
    public string Name { get; } = name;

    /// <summary>Version, three numbers.</summary>
    public string Version { get; } = version;

    /// <summary>The class that makes the calculations.</summary>
    public Type Source { get; } = source;
}
