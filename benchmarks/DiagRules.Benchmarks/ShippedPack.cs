using DiagRules.Electrohydraulics;
using DiagRules.Model;
using DiagRules.Packs;

namespace DiagRules.Benchmarks;

/// <summary>The shipped tail lift, the usual size of a pack.</summary>
internal static class ShippedPack
{
    public static string Folder { get; } = Path.Combine(Root(), "rulepacks", "corrie-ld4-tail-lift");

    public static PackLoader Loader { get; } = new(new PackLoaderOptions { Calculations = [ElectrohydraulicsLibrary.Create()] });

    public static Pack Load() => Loader.Load(Folder).Require();

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "DiagRules.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("Run the benchmarks from a clone of the repository.");
    }
}
