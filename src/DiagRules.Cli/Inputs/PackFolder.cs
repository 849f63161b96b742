using DiagRules.Model.Calculations;
using DiagRules.Packs;

namespace DiagRules.Cli.Inputs;

/// <summary>Loads packs from folders somebody named.</summary>
internal static class PackFolder
{
    /// <summary>Loads a pack with all its problems.</summary>
    /// <param name="path">Folder of the pack.</param>
    /// <param name="search">Further folders in which its bases may lie; they are looked for beside the pack as well.</param>
    /// <param name="calculations">Libraries that it may call.</param>
    /// <param name="casePath">A file of recorded cases to read in place of the pack's own, or <see langword="null"/>.</param>
    /// <exception cref="WrongUseException">There is no such folder.</exception>
    public static PackLoadResult Load(string path, IEnumerable<string> search, IReadOnlyList<CalculationLibrary> calculations, string? casePath = null)
    {
        if (File.Exists(path))
        {
            var folder = Path.GetDirectoryName(path) is { Length: > 0 } parent ? parent : ".";
            throw new WrongUseException(
                $"'{path}' is a file, and a pack is a folder{(Path.GetFileName(path) == "pack.yaml" ? $"; name the folder it lies in: '{folder}'" : "")}.");
        }

        ThrowIfMissing(path);
        var files = PackFiles.FromFolder(path);
        return new PackLoader(new PackLoaderOptions
        {
            Calculations = calculations,
            SearchFolders = [.. search, Parent(path)],
        }).Load(casePath is null ? files : new PackWithCase(files, casePath));
    }

    /// <summary>Refuses a folder that is not there, naming one that may have been meant.</summary>
    /// <exception cref="WrongUseException">It is not there.</exception>
    public static void ThrowIfMissing(string path)
    {
        if (Directory.Exists(path))
        {
            return;
        }

        var parent = Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(path)) ?? "";
        var beside = Directory.Exists(Parent(path))
            ? Directory.EnumerateDirectories(Parent(path)).Select(folder => Path.Combine(parent, Path.GetFileName(folder)))
            : [];
        throw new WrongUseException($"There is no folder '{path}'.{Spelling.Hint(path, beside)}");
    }

    private static string Parent(string path) =>
        Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(path)) is { Length: > 0 } parent ? parent
        : Path.GetFileName(Path.TrimEndingDirectorySeparator(path)) is "." or ".." ? Path.Combine(path, "..")
        : ".";
}
