using DiagRules.Packs.Text;

namespace DiagRules.Packs.Conditions;

/// <summary>
/// The ids that a text names, found without knowing what they are: for putting entries in order of dependence before any of them is read.
/// </summary>
internal static class MentionedIds
{
    /// <summary>
    /// Ids of readings, findings, causes and parameters at their places, <c>$set</c> still in them; no grades, no units, no names of
    /// calculations and their arguments. Nothing is reported, and a text that cannot be read gives what can be told.
    /// </summary>
    public static IReadOnlyList<PlacedText> In(PlacedText text)
    {
        var tokens = Lexer.Read(new ConditionSource(text, new ProblemSink()));
        var ids = new List<PlacedText>();
        var isGrade = false;
        for (var i = 0; i < tokens.Length - 1; i++)
        {
            var token = tokens[i];
            var next = tokens[i + 1];
            if (token.IsWord(Keywords.Is))
            {
                isGrade = true;
                continue;
            }

            if (token.Kind != TokenKind.Word || token.IsKeyword)
            {
                isGrade &= token.IsWord(Keywords.Not) || token.IsWord(Keywords.Or);
                continue;
            }

            var isTest = next.IsWord(Keywords.Is) || next.IsComparator || (next.Kind == TokenKind.Sign && next.Text is "+" or "-" or "*" or "/");
            if (isGrade && !isTest)
            {
                continue;
            }

            isGrade = false;
            var isSet = i > 0 && (tokens[i - 1].IsWord(Keywords.Any) || tokens[i - 1].IsWord(Keywords.Every));
            if (!isSet && !next.IsSign("(") && !next.IsSign(":"))
            {
                ids.Add(text.Slice(token.Start, token.Text.Length));
            }
        }

        return ids;
    }
}
