using System.Collections.Immutable;
using DiagRules.Model.Problems;

namespace DiagRules.Packs.Conditions;

/// <summary>
/// Reads the words of a condition by recursive descent, one method for each line of the grammar. A test that cannot be read is reported
/// once; reading goes on behind the next <c>and</c> or <c>or</c> that begins a test.
/// </summary>
internal sealed partial class SyntaxParser
{
    private readonly ConditionSource _source;
    private readonly ConditionLimits _limits;
    private readonly ImmutableArray<Token> _tokens;
    private readonly int[] _levels;
    private int _at;
    private int _depth;
    private bool _isTooDeep;

    private SyntaxParser(ConditionSource source, ConditionLimits limits, Func<string, bool> isId)
    {
        _source = source;
        _limits = limits;
        _tokens = Lexer.Read(source, isId);
        _levels = Levels(_tokens);
    }

    private Token Current => _tokens[_at];

    private int LastEnd => _at > 0 ? _tokens[_at - 1].End : 0;

    /// <summary>A whole condition.</summary>
    public static ConditionSyntax ReadCondition(ConditionSource source, ConditionLimits limits, Func<string, bool> isId)
    {
        var parser = new SyntaxParser(source, limits, isId);
        var condition = parser.Junction(isAnd: false);
        return parser.AtEnd("'and', 'or' or the end of the condition") ? condition : new BrokenCondition(0, source.Value.Length);
    }

    /// <summary>A whole term.</summary>
    public static TermSyntax ReadTerm(ConditionSource source, ConditionLimits limits, Func<string, bool> isId)
    {
        var parser = new SyntaxParser(source, limits, isId);
        var term = parser.Sum();
        return term is not null && parser.AtEnd("'+', '-', '*', '/' or the end") ? term : new BrokenTerm(0, source.Value.Length);
    }

    /// <summary>How many brackets are open around each word or sign; a bracket itself counts as outside.</summary>
    private static int[] Levels(ImmutableArray<Token> tokens)
    {
        var levels = new int[tokens.Length];
        var open = 0;
        for (var i = 0; i < tokens.Length; i++)
        {
            open -= tokens[i].IsSign(")") ? 1 : 0;
            levels[i] = open;
            open += tokens[i].IsSign("(") ? 1 : 0;
        }

        return levels;
    }

    private bool AtEnd(string expected)
    {
        if (_isTooDeep)
        {
            return false;
        }

        if (Current.Kind == TokenKind.End)
        {
            return true;
        }

        Fail(expected);
        return false;
    }

    /// <summary><c>condition</c> and <c>conjunction</c>: parts joined by one word.</summary>
    private ConditionSyntax Junction(bool isAnd)
    {
        var word = isAnd ? Keywords.And : Keywords.Or;
        var first = isAnd ? Negation() : Junction(isAnd: true);
        if (!Current.IsWord(word))
        {
            return first;
        }

        var parts = ImmutableArray.CreateBuilder<ConditionSyntax>();
        parts.Add(first);
        while (Current.IsWord(word))
        {
            _at++;
            parts.Add(isAnd ? Negation() : Junction(isAnd: true));
        }

        return new JunctionSyntax(isAnd, parts.DrainToImmutable(), first.Start, LastEnd);
    }

    private ConditionSyntax Negation()
    {
        var first = _at;
        var read = Current switch
        {
            { Kind: TokenKind.Word, Text: Keywords.Not } => Nested(Not),
            { Kind: TokenKind.Word, Text: Keywords.Any or Keywords.Every } => Nested(ForMembers),
            { Kind: TokenKind.Sign, Text: "(" } when HoldsCondition() => Nested(Bracketed),
            _ => Test(),
        };
        return read ?? Resume(first);
    }

    /// <summary>Reads something one level deeper, unless that is too deep.</summary>
    private T? Nested<T>(Func<T?> read)
        where T : class
    {
        if (_depth == _limits.Depth)
        {
            if (!_isTooDeep)
            {
                _isTooDeep = true;
                _source.Report(
                    ProblemCatalogue.LimitExceeded,
                    Current.Start,
                    Current.End,
                    $"The condition is nested more than {_limits.Depth} deep; split it into findings of its own (setting 'ConditionDepth').");
            }

            return null;
        }

        _depth++;
        var result = read();
        _depth--;
        return result;
    }

    private NotSyntax? Not()
    {
        var start = Current.Start;
        _at++;
        var part = Negation();
        return new NotSyntax(part, start, LastEnd);
    }

    private SetSyntax? ForMembers()
    {
        var start = Current.Start;
        var isEvery = Current.Text == Keywords.Every;
        var word = Current.Text;
        _at++;
        if (Current.Kind != TokenKind.Word || Current.Text.Length < 2 || Current.Text[0] != '$')
        {
            return Fail<SetSyntax>($"the name of a set behind '{word}', such as '{word} $side ( ... )'");
        }

        var set = new NameSyntax(Current.Text, Current.Start);
        _at++;
        if (!Current.IsSign("("))
        {
            return Fail<SetSyntax>($"'(' behind '{word} {set.Text}'");
        }

        var body = Bracketed();
        return body is null ? null : new SetSyntax(isEvery, set, body, start, LastEnd);
    }

    private ConditionSyntax? Bracketed()
    {
        _at++;
        var inner = Junction(isAnd: false);
        return Close("'and', 'or' or ')'") ? inner : null;
    }

    /// <summary>Whether the bracket that opens here is around a condition, rather than around a sum that a comparison begins with.</summary>
    private bool HoldsCondition()
    {
        var open = 0;
        for (var i = _at; i < _tokens.Length; i++)
        {
            var token = _tokens[i];
            open += token.IsSign("(") ? 1 : token.IsSign(")") ? -1 : 0;
            if (open == 0)
            {
                return false;
            }

            if (token.IsComparator || token.IsKeyword)
            {
                return true;
            }
        }

        return false;
    }

    private bool Close(string expected)
    {
        if (!Current.IsSign(")"))
        {
            Fail(expected);
            return false;
        }

        _at++;
        return true;
    }

    /// <summary>Leaves a part that could not be read behind, up to a word that begins a readable one or closes this bracket.</summary>
    private BrokenCondition Resume(int first)
    {
        var level = _levels[first];
        while (Current.Kind != TokenKind.End && (_isTooDeep || !IsPartEnd(level)))
        {
            _at++;
        }

        return new BrokenCondition(_tokens[first].Start, LastEnd);
    }

    private bool IsPartEnd(int level) =>
        Current.IsSign(")") ? _levels[_at] < level
        : _levels[_at] == level && (Current.IsWord(Keywords.And) || Current.IsWord(Keywords.Or)) && BeginsTest(_at + 1);

    /// <summary>Reports what stands where something else was expected.</summary>
    private void Fail(string expected)
    {
        if (_isTooDeep || Current.Kind == TokenKind.Broken)
        {
            return;
        }

        if (SyntaxHints.OtherProblem(_tokens, _at) is var (descriptor, first, message))
        {
            _source.Report(descriptor, _tokens[first].Start, Current.End, message);
            return;
        }

        var found = Current.Kind != TokenKind.End ? $"found '{Current.Text}'" : _at == 0 ? "it is empty" : "it ends";
        var hint = SyntaxHints.For(_tokens, _at);
        _source.Report(
            ProblemCatalogue.ConditionNotReadable,
            Current.Start,
            Current.End,
            $"Expected {expected}, but {found}{(hint is null ? "." : $"; {hint}{(hint.EndsWith('?') ? "" : ".")}")}",
            withLine: true);
    }

    private T? Fail<T>(string expected)
        where T : class
    {
        Fail(expected);
        return null;
    }
}
