using System.Collections.Immutable;

namespace DiagRules.Model.Calculations;

/// <summary>A named, versioned set of calculations, as a plugin offers it. Immutable and thread-safe.</summary>
public sealed class CalculationLibrary
{
    private readonly Dictionary<string, ICalculation> _byName;

    /// <summary>Makes a library.</summary>
    /// <param name="name">Kebab-case name, as packs declare it in <c>calculations:</c>.</param>
    /// <param name="version">Semantic version.</param>
    /// <param name="calculations">The calculations; names may not repeat.</param>
    /// <exception cref="ArgumentException">Two calculations have the same name.</exception>
    public CalculationLibrary(string name, Version version, IEnumerable<ICalculation> calculations)
    {
        ArgumentException.ThrowIfNullOrEmpty(name);
        ArgumentNullException.ThrowIfNull(version);
        ArgumentNullException.ThrowIfNull(calculations);
        Name = name;
        Version = version;
        Calculations = [.. calculations.OrderBy(calculation => calculation.Description.Name, StringComparer.Ordinal)];
        _byName = new(StringComparer.Ordinal);
        foreach (var calculation in Calculations)
        {
            if (!_byName.TryAdd(calculation.Description.Name, calculation))
            {
                throw new ArgumentException($"Calculation '{calculation.Description.Name}' is there twice.", nameof(calculations));
            }
        }
    }

    /// <summary>The name.</summary>
    public string Name { get; }

    /// <summary>The version.</summary>
    public Version Version { get; }

    /// <summary>The calculations, by name.</summary>
    public ImmutableArray<ICalculation> Calculations { get; }

    /// <summary>The calculation of this name, or <see langword="null"/>.</summary>
    public ICalculation? Find(string name) => _byName.GetValueOrDefault(name);
}
