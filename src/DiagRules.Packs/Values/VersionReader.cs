using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>A pack or library and the versions of it that will do: <c>electro-hydraulic-unit@1.x</c>.</summary>
/// <param name="Id">The id.</param>
/// <param name="Range">The versions.</param>
/// <param name="Place">Where it is written.</param>
internal sealed record VersionedId(string Id, VersionRange Range, SourcePlace Place);

/// <summary>Reads versions, ranges of versions, and ids with ranges.</summary>
internal static class VersionReader
{
    /// <summary>A version, or <see langword="null"/> after reporting.</summary>
    public static SemanticVersion? Read(PlacedText text, ProblemSink problems)
    {
        var version = SemanticVersion.Parse(text.Value);
        if (version is null)
        {
            Report(text, $"'{Excerpt.Of(text.Value)}' is not a version; write three numbers, such as '{Proposal(text.Value, "1.2.0")}'.", problems);
        }

        return version;
    }

    /// <summary>A range, or <see langword="null"/> after reporting.</summary>
    public static VersionRange? ReadRange(PlacedText text, ProblemSink problems)
    {
        var range = VersionRange.Parse(text.Value);
        if (range is null)
        {
            Report(text,
                $"'{Excerpt.Of(text.Value)}' is not a range of versions; " +
                "write '1.2.3' for just that one, '1.2.x' for any 1.2, or '1.x' for any 1.",
                problems);
        }

        return range;
    }

    /// <summary><c>id@range</c>, or <see langword="null"/> after reporting.</summary>
    public static VersionedId? ReadVersionedId(PlacedText text, ProblemSink problems)
    {
        var at = text.Value.IndexOf('@', StringComparison.Ordinal);
        if (at < 0)
        {
            var id = IdReader.IsWellFormed(text.Value) ? text.Value : "electro-hydraulic-unit";
            Report(text, $"'{Excerpt.Of(text.Value)}' does not say which versions will do; write '{id}@1.x'.", problems);
            return null;
        }

        var name = IdReader.Read(text.Slice(0, at), IdKind.Id, problems);
        var range = ReadRange(text.Slice(at + 1, text.Value.Length - at - 1), problems);
        return name is null || range is null ? null : new(name, range, text.At(0, text.Value.Length));
    }

    private static string Proposal(string text, string otherwise)
    {
        foreach (var candidate in (string[])[text.TrimStart('v', 'V'), text + ".0", text + ".0.0"])
        {
            if (SemanticVersion.Parse(candidate) is not null)
            {
                return candidate;
            }
        }

        return otherwise;
    }

    private static void Report(PlacedText text, string message, ProblemSink problems) =>
        problems.Add(ProblemCatalogue.NoVersionFits, text.At(0, text.Value.Length), message);
}
