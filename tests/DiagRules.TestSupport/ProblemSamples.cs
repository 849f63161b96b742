using System.Text;

namespace DiagRules.TestSupport;

/// <summary>
/// The samples below <c>tests/problems</c>: for each code a pack that raises it (<c>bad</c>), the nearest one that raises nothing
/// (<c>good</c>), and the lines that are printed for the bad one (<c>expected.txt</c>).
/// </summary>
/// <remarks>Where other packs are needed, the pack lies in <c>lift</c> and the others beside it; else it lies in <c>bad</c> or <c>good</c> itself.</remarks>
public static class ProblemSamples
{
    /// <summary>Set to 1, it makes tests write what they should compare with. Read the difference before you commit it.</summary>
    public const string WriteAnew = "DIAGRULES_WRITE_PROBLEMS";

    /// <summary>Codes that the text of a pack alone does not raise, and what raises them.</summary>
    public static IReadOnlyDictionary<string, string> RaisedByPlaying { get; } = new Dictionary<string, string>
    {
        ["DR6006"] = "raised by 'validate', which plays the cases",
        ["DR6007"] = "raised by 'replay'",
        ["DR6008"] = "raised by 'replay'",
        ["DR6010"] = "raised by 'validate', which plays the cases",
        ["DR6011"] = "raised by 'validate', which plays the cases",
    };

    /// <summary>Codes that nothing raises yet, and why; their pages say so.</summary>
    public static IReadOnlyDictionary<string, string> NotRaisedYet { get; } = new Dictionary<string, string>
    {
        ["DR7005"] = "not raised yet: packs are neither signed nor pinned",
        ["DR7006"] = "not raised yet: weighing beyond its budget is refused with a message of its own",
    };

    /// <summary>Codes that no text of a pack raises by itself, and where they are raised.</summary>
    public static IReadOnlyDictionary<string, string> RaisedWhileDiagnosing { get; } = new Dictionary<string, string>
    {
        ["DR7003"] = "raised in the notes of a diagnosis; the calculations that come with this repository do not fail",
    };

    /// <summary>Codes that have no sample.</summary>
    public static IReadOnlyList<string> Without { get; } = [.. RaisedWhileDiagnosing.Keys.Concat(NotRaisedYet.Keys).Order(StringComparer.Ordinal)];

    /// <summary>Codes that have samples, in order.</summary>
    public static IReadOnlyList<string> Codes { get; } =
        [.. Directory.EnumerateDirectories(RepositoryFolder.At("tests", "problems")).Select(folder => Path.GetFileName(folder)!).Order(StringComparer.Ordinal)];

    /// <summary>Whether tests are to write what they should compare with.</summary>
    public static bool IsWriting => Environment.GetEnvironmentVariable(WriteAnew) == "1";

    /// <summary>The folder with everything of a sample.</summary>
    public static string Folder(string code, bool isBad) => RepositoryFolder.At("tests", "problems", code, isBad ? "bad" : "good");

    /// <summary>The folder of the pack itself.</summary>
    public static string PackFolder(string code, bool isBad)
    {
        var folder = Folder(code, isBad);
        var lift = Path.Combine(folder, "lift");
        return Directory.Exists(lift) ? lift : folder;
    }

    /// <summary>The lines that should be printed for the bad one, paths as seen from its folder.</summary>
    public static string Expected(string code) => File.Exists(ExpectedFile(code)) ? File.ReadAllText(ExpectedFile(code), Encoding.UTF8).ReplaceLineEndings("\n") : "";

    /// <summary>The same for what was printed with full paths.</summary>
    public static string AsSeenFromItsFolder(string code, bool isBad, IEnumerable<object> problems)
    {
        var folder = Folder(code, isBad).Replace('\\', '/');
        var lines = string.Concat(problems.Select(problem => $"{problem}\n"));
        return lines.Replace('\\', '/').Replace(folder + "/", "", StringComparison.Ordinal).Replace(folder, Path.GetFileName(folder), StringComparison.Ordinal);
    }

    /// <summary>Writes the lines anew, if tests are to.</summary>
    public static void Write(string code, string lines)
    {
        if (IsWriting)
        {
            File.WriteAllText(ExpectedFile(code), lines);
        }
    }

    private static string ExpectedFile(string code) => RepositoryFolder.At("tests", "problems", code, "expected.txt");
}
