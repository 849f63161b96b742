using System.Collections.Immutable;

namespace DiagRules.Packs.Conditions;

/// <summary>A condition as it is written, before its words are looked up.</summary>
/// <param name="Start">Where it begins in the text.</param>
/// <param name="End">Behind its last character.</param>
internal abstract record ConditionSyntax(int Start, int End);

/// <summary>A part that could not be read; reported already.</summary>
internal sealed record BrokenCondition(int Start, int End) : ConditionSyntax(Start, End);

/// <summary>Parts joined by <c>and</c> or by <c>or</c>.</summary>
internal sealed record JunctionSyntax(bool IsAnd, ImmutableArray<ConditionSyntax> Parts, int Start, int End) : ConditionSyntax(Start, End);

/// <summary><c>not</c> and what it denies.</summary>
internal sealed record NotSyntax(ConditionSyntax Part, int Start, int End) : ConditionSyntax(Start, End);

/// <summary><c>any $set (...)</c> or <c>every $set (...)</c>.</summary>
internal sealed record SetSyntax(bool IsEvery, NameSyntax Set, ConditionSyntax Body, int Start, int End) : ConditionSyntax(Start, End);

/// <summary><c>known id</c> or <c>unknown id</c>.</summary>
internal sealed record KnownSyntax(bool WantsKnown, NameSyntax Name, int Start, int End) : ConditionSyntax(Start, End);

/// <summary>Which grades beside the named one a test takes.</summary>
internal enum GradeReach
{
    /// <summary>The named ones only.</summary>
    Named,

    /// <summary><c>or worse</c></summary>
    OrWorse,

    /// <summary><c>or better</c></summary>
    OrBetter,
}

/// <summary><c>id is [not] grades</c>.</summary>
internal sealed record GradeTestSyntax(NameSyntax Name, bool IsNot, ImmutableArray<NameSyntax> Grades, GradeReach Reach, int Start, int End)
    : ConditionSyntax(Start, End);

/// <summary><c>a &lt; b</c>, or the chain <c>a &lt; b &lt; c</c>.</summary>
/// <param name="Terms">Two or three.</param>
/// <param name="Comparators">One less than terms.</param>
/// <param name="Start">Where it begins in the text.</param>
/// <param name="End">Behind its last character.</param>
internal sealed record ComparisonSyntax(ImmutableArray<TermSyntax> Terms, ImmutableArray<Token> Comparators, int Start, int End)
    : ConditionSyntax(Start, End);

/// <summary>A number as it is written, before its words are looked up.</summary>
/// <param name="Start">Where it begins in the text.</param>
/// <param name="End">Behind its last character.</param>
internal abstract record TermSyntax(int Start, int End);

/// <summary>A number or unit that could not be read; reported already.</summary>
internal sealed record BrokenTerm(int Start, int End) : TermSyntax(Start, End);

/// <summary>A number with its unit.</summary>
internal sealed record NumberSyntax(Token Number) : TermSyntax(Number.Start, Number.End);

/// <summary>An id or another word.</summary>
internal sealed record NameSyntax(string Text, int Start) : TermSyntax(Start, Start + Text.Length);

/// <summary>A calculation with its arguments.</summary>
internal sealed record CallSyntax(NameSyntax Name, ImmutableArray<ArgumentSyntax> Arguments, int Start, int End) : TermSyntax(Start, End);

/// <summary>One argument, with a name or without.</summary>
internal readonly record struct ArgumentSyntax(NameSyntax? Name, TermSyntax Value);

/// <summary>Two terms and a sign between them.</summary>
internal sealed record BinarySyntax(char Sign, TermSyntax Left, TermSyntax Right, int Start, int End) : TermSyntax(Start, End);

/// <summary>A term with the sign turned.</summary>
internal sealed record NegatedSyntax(TermSyntax Operand, int Start, int End) : TermSyntax(Start, End);
