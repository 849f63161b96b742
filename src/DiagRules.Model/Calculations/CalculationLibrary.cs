using System.Collections.Immutable;

namespace DiagRules.Model.Calculations;

/// <summary>A named, versioned set of calculations, as a plugin offers it. Immutable and thread-safe.</summary>
public sealed class CalculationLibrary
{
    private readonly Dictionary<string, ICalculation> _byName;

    /// <summary>Makes a library.</summary>
    /// <param name="name">Kebab-case name, as packs declare it in <c>calculations:</c>.</param>
    /// <param name="version">Semantic version.</param>
    /// <param name="calculations">The calculations, in any order.</param>
    /// <exception cref="ArgumentException">
    /// A name is not kebab-case (64 characters at most) or is a word of the condition language, two calculations or two
    /// parameters of one have the same name, or a default is not finite. The message lists all faults.
    /// </exception>
    public CalculationLibrary(string name, Version version, IEnumerable<ICalculation> calculations)
    {
        ArgumentException.ThrowIfNullOrEmpty(name);
        ArgumentNullException.ThrowIfNull(version);
        ArgumentNullException.ThrowIfNull(calculations);
        Name = name;
        Version = version;
        Calculations = [.. calculations.OrderBy(calculation => calculation.Description.Name, StringComparer.Ordinal)];

        List<string> faults = [.. LibraryFaults.Of(this)];
        if (faults.Count > 0)
        {
            throw new ArgumentException($"Library '{name}' cannot be used. {string.Join(" ", faults)}", nameof(calculations));
        }

        _byName = Calculations.ToDictionary(calculation => calculation.Description.Name, StringComparer.Ordinal);
    }

    /// <summary>The name.</summary>
    public string Name { get; }

    /// <summary>The version.</summary>
    public Version Version { get; }

    /// <summary>The calculations, by name.</summary>
    public ImmutableArray<ICalculation> Calculations { get; }

    /// <summary>The calculation of this name, or <see langword="null"/>.</summary>
    public ICalculation? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return _byName.GetValueOrDefault(name);
    }
}
