using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace DiagRules.Packs.Tree;

/// <summary>
/// Finds out where each character of a scalar stands in the file. YAML folds lines, takes escapes apart and strips indentation, so the
/// source is walked along with the value.
/// </summary>
internal static class ScalarPlaces
{
    public static PlacedText Of(SourceText source, Scalar scalar)
    {
        var start = (int)scalar.Start.Index;
        var length = (int)scalar.End.Index - start;
        var isQuoted = scalar.Style is not (ScalarStyle.Plain or ScalarStyle.Any);
        var quotes = scalar.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted ? 1 : 0;
        var raw = source.Text.AsSpan(start + quotes, Math.Max(0, Math.Min(length, source.Text.Length - start) - (2 * quotes)));
        var place = source.Place(scalar.Start.Line, scalar.Start.Column + quotes, Math.Min(raw.Length, LengthOnLine(raw)));
        return raw.SequenceEqual(scalar.Value) && !raw.ContainsAny('\r', '\n')
            ? new PlacedText(scalar.Value, place, isQuoted)
            : Mapped(source, scalar, place, start + quotes);
    }

    /// <summary>The comment behind unquoted text, which an author may have meant as part of it.</summary>
    public static string? CutOff(SourceText source, Scalar scalar)
    {
        var rest = source.Text.AsSpan((int)scalar.End.Index);
        var trimmed = rest.TrimStart(' ');
        if (trimmed.Length == rest.Length || !trimmed.StartsWith("#"))
        {
            return null;
        }

        var end = trimmed.IndexOfAny('\r', '\n');
        return (end < 0 ? trimmed : trimmed[..end]).TrimEnd().ToString();
    }

    private static PlacedText Mapped(SourceText source, Scalar scalar, SourcePlace place, int start)
    {
        var map = new SourceWalk(source.Text, start, scalar.Style).Map(scalar.Value);
        var places = new (int Line, int Column)[map.Length];
        for (var i = 0; i < map.Length; i++)
        {
            places[i] = source.LineAndColumn(map[i]);
        }

        if (places.Length > 0)
        {
            place = place with { Line = places[0].Line, Column = places[0].Column };
        }

        return new PlacedText(scalar.Value, place, scalar.Style is not (ScalarStyle.Plain or ScalarStyle.Any)) { Map = places };
    }

    private static int LengthOnLine(ReadOnlySpan<char> raw)
    {
        var end = raw.IndexOfAny('\r', '\n');
        return end < 0 ? raw.Length : raw[..end].TrimEnd().Length;
    }
}
