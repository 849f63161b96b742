using DiagRules.Electrohydraulics;
using DiagRules.Packs;
using DiagRules.TestSupport;

namespace DiagRules.RulePacks.Tests;

/// <summary>The packs of this repository.</summary>
internal static class ShippedPacks
{
    private static readonly Lazy<IReadOnlyDictionary<string, PackLoadResult>> Loaded = new(Load);

    public static IReadOnlyDictionary<string, PackLoadResult> All => Loaded.Value;

    private static Dictionary<string, PackLoadResult> Load()
    {
        var packs = RepositoryFolder.At("rulepacks");
        var loader = new PackLoader(new PackLoaderOptions { Calculations = [ElectrohydraulicsLibrary.Create()], SearchFolders = [packs] });
        return Directory.GetDirectories(packs)
            .ToDictionary(folder => Path.GetFileName(folder)!, loader.Load);
    }
}
