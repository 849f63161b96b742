using DiagRules.Model.Quantities;

namespace DiagRules.Packs.Conditions;

/// <summary>Kinds of words and signs in a condition.</summary>
internal enum TokenKind
{
    /// <summary>The end of the text.</summary>
    End,

    /// <summary>An id, a grade, a keyword, the name of a calculation or a <c>$set</c>.</summary>
    Word,

    /// <summary>A number, with its unit if it has one.</summary>
    Number,

    /// <summary>A number or unit that was reported already.</summary>
    Broken,

    /// <summary><c>( ) , : + - * / &lt; &lt;= &gt; &gt;= = !=</c></summary>
    Sign,

    /// <summary>A character that has no meaning in a condition.</summary>
    Stray,
}

/// <summary>A word or sign of a condition.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">As written.</param>
/// <param name="Start">Where it begins in the text.</param>
/// <param name="Value">Of a number.</param>
/// <param name="Unit">Of a number; <see langword="null"/> for a bare one.</param>
internal readonly record struct Token(TokenKind Kind, string Text, int Start, double Value = 0, Unit? Unit = null)
{
    public int End => Start + Text.Length;

    public bool IsSign(string sign) => Kind == TokenKind.Sign && Text == sign;

    public bool IsWord(string word) => Kind == TokenKind.Word && Text == word;

    public bool IsKeyword => Kind == TokenKind.Word && Keywords.Contains(Text);

    public bool IsComparator => Kind == TokenKind.Sign && Text is "<" or "<=" or ">" or ">=" or "=" or "!=";
}
