using System.Globalization;
using System.Text;
using DiagRules.Model.Problems;
using DiagRules.TestSupport;

namespace DiagRules.Conventions.Tests;

/// <summary>The page of a problem code: what people wrote, and the parts that follow from the catalogue and the samples.</summary>
internal static class ProblemPage
{
    public const string
        Meaning = "## What it means",
        Example = "## Example",
        Mending = "## How to mend it",
        Mended = "## Mended",
        Accepting = "## When to accept it";

    private const string NoSample = "There is no sample: no text of a pack raises this code.\n";

    /// <summary>All headings, in order.</summary>
    public static IReadOnlyList<string> Headings { get; } = [Meaning, Example, Mending, Mended, Accepting];

    public static string File(string code) => RepositoryFolder.At("docs", "problems", code + ".md");

    /// <summary>The page as it should be: its own words, with the parts that follow from elsewhere.</summary>
    public static string Of(ProblemDescriptor descriptor, string page)
    {
        var parts = Parts(page);
        return $"# {descriptor.Code}: {descriptor.Title}\n\n"
            + $"Default severity: **{descriptor.Severity.ToString().ToLowerInvariant()}**\n\n"
            + string.Join("\n", Headings.Select(heading => $"{heading}\n{Part(descriptor.Code, heading, parts)}"));
    }

    /// <summary>What stands under each heading.</summary>
    public static IReadOnlyDictionary<string, string> Parts(string page) => page.Split("\n## ").Skip(1)
        .Select(part => part.Split('\n', 2))
        .ToDictionary(part => "## " + part[0], part => part[1].Trim('\n') + "\n");

    private static string Part(string code, string heading, IReadOnlyDictionary<string, string> parts) => heading switch
    {
        Example => ProblemSamples.Without.Contains(code) ? NoSample : Bad(code),
        Mended => ProblemSamples.Without.Contains(code) ? NoSample : Good(code),
        _ => parts.GetValueOrDefault(heading, ""),
    };

    private static string Bad(string code)
    {
        var verb = ProblemSamples.RaisedByPlaying.GetValueOrDefault(code)?.Contains("'replay'", StringComparison.Ordinal) == true ? "replay" : "validate";
        return string.Concat(Files(code, isBad: true).Select(Show)) + $"`{verb}` prints:\n```text\n{ProblemSamples.Expected(code)}```\n";
    }

    /// <summary>Only what is different; the rest stands above.</summary>
    private static string Good(string code)
    {
        var bad = Files(code, isBad: true);
        var different = Files(code, isBad: false).Where(file => bad.GetValueOrDefault(file.Key) != file.Value);
        return string.Join("\n", different.Select(file => Show(file).TrimEnd('\n') + "\n"));
    }

    private static string Show(KeyValuePair<string, string> file) =>
        file.Value.StartsWith(LinkTo, StringComparison.Ordinal) ? $"`{file.Key}` {file.Value}.\n\n" : $"`{file.Key}`:\n```yaml\n{file.Value}```\n\n";

    private const string LinkTo = "is a link to ";

    private static SortedDictionary<string, string> Files(string code, bool isBad)
    {
        var folder = ProblemSamples.Folder(code, isBad);
        return new(
            Directory.EnumerateFiles(folder, "*.yaml", SearchOption.AllDirectories)
                .ToDictionary(file => Path.GetRelativePath(folder, file).Replace('\\', '/'), Content), StringComparer.Ordinal);
    }

    private static string Content(string file) =>
        new FileInfo(file).LinkTarget is { } target ? $"{LinkTo}`{target}`" : Visible(System.IO.File.ReadAllBytes(file)).TrimEnd('\n') + "\n";

    /// <summary>Shows what would not be seen: <c>&lt;tab&gt;</c>, <c>&lt;U+200B&gt;</c>, <c>&lt;byte E4&gt;</c>.</summary>
    private static string Visible(ReadOnlySpan<byte> bytes)
    {
        var text = new StringBuilder();
        while (!bytes.IsEmpty)
        {
            var isRune = Rune.DecodeFromUtf8(bytes, out var rune, out var length) == System.Buffers.OperationStatus.Done;
            text.Append(isRune ? Visible(rune) : string.Create(CultureInfo.InvariantCulture, $"<byte {bytes[0]:X2}>"));
            bytes = bytes[(isRune ? length : 1)..];
        }

        return text.ToString();
    }

    private static string Visible(Rune rune) =>
        rune.Value == '\t' ? "<tab>"
        : Rune.GetUnicodeCategory(rune) is UnicodeCategory.Format ? string.Create(CultureInfo.InvariantCulture, $"<U+{rune.Value:X4}>")
        : rune.ToString();
}
