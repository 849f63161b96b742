using DiagRules.Model.Calculations;

namespace DiagRules.Packs;

/// <summary>What a pack loader may use. Settable before the loader is made; <c>new PackLoaderOptions()</c> reads packs that need nothing else.</summary>
public sealed class PackLoaderOptions
{
    /// <summary>Libraries that packs may name in <c>calculations</c>; none by default. <c>min</c>, <c>max</c>, <c>abs</c> and <c>mean</c> are always there.</summary>
    public IReadOnlyList<CalculationLibrary> Calculations { get; set; } = [];

    /// <summary>
    /// Folders in which bases of a pack (<c>extends</c>) are looked for: each may be a pack itself, or hold packs in folders of their own
    /// up to four levels down. None by default.
    /// </summary>
    public IReadOnlyList<string> SearchFolders { get; set; } = [];

    /// <summary>Bases that do not lie in a folder, beside those of the search folders; none by default.</summary>
    public IReadOnlyList<PackFiles> Bases { get; set; } = [];

    /// <summary>How much a pack may ask of its reader.</summary>
    public PackLimits Limits { get; set; } = new();
}
