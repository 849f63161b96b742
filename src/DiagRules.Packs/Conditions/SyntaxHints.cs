using System.Collections.Immutable;
using System.Globalization;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Conditions;

/// <summary>What people usually mean by words and signs that a condition does not have.</summary>
internal static class SyntaxHints
{
    private static readonly string[] Joining = [Keywords.And, Keywords.Or, Keywords.Is];

    /// <summary>A problem of its own that explains what stands at a place, with the word or sign it begins at; or <see langword="null"/>.</summary>
    public static (ProblemDescriptor Descriptor, int First, string Message)? OtherProblem(ImmutableArray<Token> tokens, int at)
    {
        if (at == 0)
        {
            return null;
        }

        var (before, token) = (tokens[at - 1], tokens[at]);
        if (before is { Kind: TokenKind.Number, Unit: null } && token.Kind == TokenKind.Number)
        {
            return (ProblemCatalogue.NumberNotReadable, at - 1, $"'{before.Text} {token.Text}' is two numbers side by side: write '{before.Text}{token.Text}' if it is one.");
        }

        // 'fuse-feed-3 V' is an id and a unit, which nobody means.
        var dash = before.Text.LastIndexOf('-');
        return before.Kind == TokenKind.Word && dash > 0 && UnitTable.TryGet(token.Text, out _)
            && double.TryParse(before.Text.AsSpan(dash + 1), NumberStyles.Float, CultureInfo.InvariantCulture, out _)
            ? (ProblemCatalogue.MinusWithoutSpaces, at - 1,
                $"'{before.Text}' is read as one id; " +
                $"write '{before.Text[..dash]} - {before.Text[(dash + 1)..]} {token.Text}' with spaces for the difference.")
            : null;
    }

    /// <summary>Half a sentence on the word or sign at a place, or <see langword="null"/>.</summary>
    public static string? For(ImmutableArray<Token> tokens, int at)
    {
        var token = tokens[at];
        var before = at > 0 ? tokens[at - 1] : default;
        return token.Kind switch
        {
            TokenKind.Word => ForWord(token, before),
            TokenKind.Sign when at == 0 => ForFirstSign(token),
            TokenKind.Sign when token.IsComparator && before.IsComparator => ForDoubleSign(before.Text + token.Text),
            TokenKind.Sign when token.IsComparator => "join a further comparison with 'and'",
            TokenKind.Stray => ForStray(token.Text),
            _ => null,
        };
    }

    private static string? ForWord(Token token, Token before)
    {
        var word = token.Text;
        var lower = word.ToLowerInvariant();
        if (token.IsKeyword)
        {
            return null;
        }

        if (Keywords.Contains(lower))
        {
            return $"write '{lower}' in small letters";
        }

        var near = word.Length > 1 ? Joining.FirstOrDefault(keyword => Spelling.Distance(word, keyword, 1) <= 1) : null;
        return lower switch
        {
            "isnt" or "isn" => "write 'is not'",
            "equals" or "are" or "was" => "write 'is' for a grade, '=' for a count",
            "but" or "plus" => "write 'and'",
            _ when near is not null => $"did you mean '{near}'?",
            _ when before is { Kind: TokenKind.Word, IsKeyword: false } => $"write '{before.Text} is {word}' to test a grade",
            _ when before.Kind == TokenKind.Number => $"write '{before.Text} * {word}' for the product",
            _ => null,
        };
    }

    private static string? ForFirstSign(Token token) => token switch
    {
        { IsComparator: true } => $"say what is compared, such as 'fuse-feed {token.Text} 5 V'",
        { Text: "*" or "/" or "+" } => $"'{token.Text}' has a number on either side",
        _ => null,
    };

    private static string? ForDoubleSign(string signs) => signs switch
    {
        "==" => "write one '=' between counts, and 'is' before a grade",
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
