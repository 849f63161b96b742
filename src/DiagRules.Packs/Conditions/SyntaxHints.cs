using System.Collections.Immutable;

namespace DiagRules.Packs.Conditions;

/// <summary>What people usually mean by words and signs that a condition does not have.</summary>
internal static class SyntaxHints
{
    /// <summary>Half a sentence on the word or sign at a place, or <see langword="null"/>.</summary>
    public static string? For(ImmutableArray<Token> tokens, int at)
    {
        var token = tokens[at];
        return token.Kind switch
        {
            TokenKind.Word => ForWord(token.Text),
            TokenKind.Number when at > 0 && tokens[at - 1].Kind == TokenKind.Number => "two numbers stand side by side; digits are not grouped by spaces",
            TokenKind.Sign when at == 0 && token.IsComparator => $"say what is compared: 'fuse-feed {token.Text} 5 V'",
            TokenKind.Sign when at == 0 && token.Text == "*" => "nothing is multiplied here",
            TokenKind.Sign when token.IsComparator && tokens[at - 1].IsComparator => ForDoubleSign(tokens[at - 1].Text + token.Text),
            TokenKind.Sign when token.IsComparator => "join a further comparison with 'and'",
            TokenKind.Stray => ForStray(token.Text),
            _ => null,
        };
    }

    private static string? ForWord(string word)
    {
        var lower = word.ToLowerInvariant();
        return lower switch
        {
            _ when lower != word && Keywords.Contains(lower) => $"write '{lower}' in small letters",
            "isnt" or "isn" => "write 'is not'",
            "equals" or "are" or "was" => "write 'is' for a grade, '=' for a count",
            "but" or "plus" => "write 'and'",
            "xor" => "write it out with 'and', 'or' and 'not'",
            "present" or "absent" => $"write 'is {lower}'",
            _ => null,
        };
    }

    private static string? ForDoubleSign(string signs) => signs switch
    {
        "==" => "write '='",
        "=<" => "write '<='",
        "=>" => "write '>='",
        "<>" => "write '!='",
        _ => null,
    };

    private static string? ForStray(string sign) => sign switch
    {
        "!" => "write 'not', or '!=' between two counts",
        "&" => "write 'and'",
        "|" => "write 'or'",
        "\u2264" => "write '<='",
        "\u2265" => "write '>='",
        "\u2260" => "write '!='",
        "\u2212" or "\u2013" => "write '-' with a space on either side",
        "\u00D7" or "\u00B7" => "write '*'",
        "\u00F7" => "write '/'",
        "^" => "multiply it by itself instead",
        "%" => "percent stands behind its number, as in '25 %'",
        "[" or "{" => "brackets are round here",
        "\"" or "'" => "ids and grades stand without quotes",
        _ => null,
    };
}
