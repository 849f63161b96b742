using DiagRules.Electrohydraulics;
using DiagRules.Packs;

namespace DiagRules.RulePacks.Tests;

/// <summary>The packs of this repository.</summary>
internal static class ShippedPacks
{
    private static readonly Lazy<IReadOnlyDictionary<string, PackLoadResult>> Loaded = new(Load);

    public static IReadOnlyDictionary<string, PackLoadResult> All => Loaded.Value;

    private static Dictionary<string, PackLoadResult> Load()
    {
        var loader = new PackLoader(new PackLoaderOptions { Calculations = [ElectrohydraulicsLibrary.Create()] });
        return Directory.GetDirectories(Path.Combine(Root(), "rulepacks"))
            .ToDictionary(folder => Path.GetFileName(folder)!, loader.Load);
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "DiagRules.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("No DiagRules.sln above the tests.");
    }
}
