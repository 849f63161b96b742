using DiagRules.Electrohydraulics;
using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs;

namespace DiagRules.Cli.Inputs;

/// <summary>Loads packs from folders somebody named.</summary>
internal static class PackFolder
{
    /// <summary>Loads a pack with all its problems.</summary>
    /// <param name="path">Folder of the pack.</param>
    /// <param name="search">Further folders in which its bases may lie; they are looked for beside the pack as well.</param>
    /// <exception cref="WrongUseException">There is no such folder.</exception>
    public static PackLoadResult Load(string path, IEnumerable<string> search)
    {
        if (File.Exists(path))
        {
            var folder = Path.GetDirectoryName(path) is { Length: > 0 } parent ? parent : ".";
            throw new WrongUseException(
                $"'{path}' is a file, and a pack is a folder{(Path.GetFileName(path) == "pack.yaml" ? $"; name the folder it lies in: '{folder}'" : "")}.");
        }

        ThrowIfMissing(path);
        return new PackLoader(new PackLoaderOptions
        {
            Calculations = [ElectrohydraulicsLibrary.Create()],
            SearchFolders = [.. search, Parent(path)],
        }).Load(path);
    }

    /// <summary>Loads a pack that must be usable.</summary>
    /// <exception cref="WrongUseException">There is no such folder, or the pack was refused; then the message shows the errors.</exception>
    public static Pack Require(string path, IEnumerable<string> search)
    {
        var result = Load(path, search);
        if (result.Pack is { } pack)
        {
            return pack;
        }

        var errors = result.Problems.Where(problem => problem.Severity == Severity.Error).Select(problem => problem.ToString()).ToList();
        throw new WrongUseException(string.Join(
            Environment.NewLine,
            [.. errors, $"The pack in '{path}' was refused: {Rendering.Words.Count(errors.Count, "error", "errors")}."]));
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
