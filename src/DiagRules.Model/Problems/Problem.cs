namespace DiagRules.Model.Problems;

/// <summary>One fault of a pack or a recorded case, at its place. Immutable.</summary>
/// <param name="Descriptor">Code, severity and title.</param>
/// <param name="Message">What was found, what was expected, and the nearest way out; one line of plain text. Where the text itself is not
/// readable (DR1001, DR3001) two more lines, parted by <c>\n</c>, show it with a caret below the place.</param>
/// <param name="Place">Where.</param>
public sealed record Problem(ProblemDescriptor Descriptor, string Message, SourcePlace Place)
{
    /// <summary>The reason with which the pack accepts this warning; <see langword="null"/> when it does not.</summary>
    public string? Accepted { get; init; }

    /// <summary>The code, e.g. <c>DR2004</c>.</summary>
    public string Code => Descriptor.Code;

    /// <summary>The severity of the descriptor.</summary>
    public Severity Severity => Descriptor.Severity;

    /// <summary><c>file(line,column): error DR2004: message</c>, the line that compilers print and editors link.</summary>
    public override string ToString() => $"{Place}: {Severity.ToString().ToLowerInvariant()} {Code}: {Message}";
}
