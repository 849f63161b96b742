using System.Text;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Sets;

/// <summary>Puts members in the place of <c>$set</c>, and keeps for each character the place in the template it came from.</summary>
internal static class Substitution
{
    /// <summary>The text with each mention of a set replaced; mentions for which there is no replacement stay.</summary>
    /// <param name="text">The text as written.</param>
    /// <param name="replacement">What stands for a set, or <see langword="null"/> to leave it.</param>
    public static PlacedText Apply(PlacedText text, Func<string, string?> replacement)
    {
        if (!text.Value.Contains('$', StringComparison.Ordinal))
        {
            return text;
        }

        var value = new StringBuilder();
        var map = new List<(int Line, int Column)>();
        var at = 0;
        foreach (var match in MemberSets.Mention().EnumerateMatches(text.Value))
        {
            var mention = text.Value.AsSpan(match.Index, match.Length);
            var put = mention is "$$" ? "$" : replacement(mention[1..].ToString());
            if (put is null)
            {
                continue;
            }

            Keep(text, at, match.Index, value, map);
            value.Append(put);
            map.AddRange(Enumerable.Repeat(Spot(text, match.Index), put.Length));
            at = match.Index + match.Length;
        }

        Keep(text, at, text.Value.Length, value, map);
        return new PlacedText(value.ToString(), text.Place, text.IsQuoted) { Map = [.. map] };
    }

    private static void Keep(PlacedText text, int from, int to, StringBuilder value, List<(int Line, int Column)> map)
    {
        value.Append(text.Value, from, to - from);
        for (var i = from; i < to; i++)
        {
            map.Add(Spot(text, i));
        }
    }

    private static (int Line, int Column) Spot(PlacedText text, int offset)
    {
        var place = text.At(offset);
        return (place.Line, place.Column);
    }
}
