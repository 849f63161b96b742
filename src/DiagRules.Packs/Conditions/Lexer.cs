using System.Collections.Immutable;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Conditions;

/// <summary>
/// Cuts a condition into words and signs. Faults within a number or a unit, and signs without their spaces, are reported here; reading
/// goes on behind them, so that one look shows them all.
/// </summary>
internal sealed class Lexer
{
    private readonly ConditionSource _source;
    private readonly string _text;
    private readonly Func<string, bool> _isId;
    private readonly ImmutableArray<Token>.Builder _tokens = ImmutableArray.CreateBuilder<Token>();
    private readonly Stack<bool> _brackets = new();
    private int _at;
    private int _openCalls;

    private Lexer(ConditionSource source, Func<string, bool> isId)
    {
        _isId = isId;
        _source = source;
        _text = source.Value;
    }

    /// <summary>All words and signs, the end among them.</summary>
    /// <param name="source">The condition.</param>
    /// <param name="isId">
    /// Whether a word behind <c>V/</c> is an id to divide by, rather than a unit that is not known; anything may be one when not given.
    /// </param>
    public static ImmutableArray<Token> Read(ConditionSource source, Func<string, bool>? isId = null)
    {
        var lexer = new Lexer(source, isId ?? (_ => true));
        while (lexer.ReadNext())
        {
        }

        return lexer._tokens.DrainToImmutable();
    }

    private bool ReadNext()
    {
        while (_at < _text.Length && char.IsWhiteSpace(_text[_at]))
        {
            _at++;
        }

        if (_at == _text.Length)
        {
            Add(TokenKind.End, 0);
            return false;
        }

        if (NumberScanner.Begins(_text.AsSpan(_at)))
        {
            ReadNumber();
        }
        else if (IsWordStart(_text[_at]))
        {
            Add(TokenKind.Word, WordLength(_at));
        }
        else
        {
            ReadSign();
        }

        return true;
    }

    private void ReadNumber()
    {
        var start = _at;
        var number = NumberScanner.Scan(_text.AsSpan(start), commaSeparates: _openCalls > 0);
        if (number.Fault is not null)
        {
            _source.Report(ProblemCatalogue.NumberNotReadable, start, start + number.Length, number.Fault);
        }

        var unitStart = start + number.Length;
        while (unitStart < _text.Length && char.IsWhiteSpace(_text[unitStart]))
        {
            unitStart++;
        }

        var isBroken = number.Fault is not null;
        if (!HasUnitAt(unitStart) || unitStart == start + number.Length)
        {
            Add(isBroken ? TokenKind.Broken : TokenKind.Number, number.Length, number.Value);
            return;
        }

        var unit = UnitScanner.Scan(_text.AsSpan(unitStart), _isId);
        if (unit.Unit is null)
        {
            var symbol = _text.Substring(unitStart, unit.Length);
            _source.Report(ProblemCatalogue.UnknownUnit, unitStart, unitStart + unit.Length, UnitScanner.Fault(symbol));
            isBroken = true;
        }

        Add(isBroken ? TokenKind.Broken : TokenKind.Number, unitStart + unit.Length - start, number.Value, unit.Unit);
    }

    /// <summary>A word behind a number is its unit unless it belongs to the language or is plainly an id.</summary>
    private bool HasUnitAt(int start)
    {
        if (!UnitScanner.Begins(_text.AsSpan(start)))
        {
            return false;
        }

        if (!IsWordStart(_text[start]))
        {
            return true;
        }

        var word = _text.Substring(start, WordLength(start));
        return !Keywords.Contains(word) && (word.IndexOfAny(['-', '_', '$']) < 0 || UnitScanner.Scan(_text.AsSpan(start), _isId).Unit is not null);
    }

    private void ReadSign()
    {
        var two = _at + 1 < _text.Length ? _text.Substring(_at, 2) : "";
        if (two is "<=" or ">=" or "!=")
        {
            Add(TokenKind.Sign, 2);
            return;
        }

        var sign = _text[_at];
        switch (sign)
        {
            case '(':
                _brackets.Push(IsCallName());
                _openCalls += _brackets.Peek() ? 1 : 0;
                break;
            case ')' when _brackets.Count > 0:
                _openCalls -= _brackets.Pop() ? 1 : 0;
                break;
            case '+' or '-' when _tokens.Count > 0 && EndsOperand(_tokens[^1]):
                CheckSpaces(sign);
                break;
        }

        Add("(),:+-*/<>=".Contains(sign, StringComparison.Ordinal) ? TokenKind.Sign : TokenKind.Stray, 1);
    }

    private bool IsCallName() => _tokens.Count > 0 && _tokens[^1] is { Kind: TokenKind.Word, IsKeyword: false } word && !word.Text.StartsWith('$');

    /// <summary>A sign between two numbers stands between spaces: <c>a-b</c> is one id, and <c>a -b</c> leaves open what was meant.</summary>
    private void CheckSpaces(char sign)
    {
        var before = _at > 0 && char.IsWhiteSpace(_text[_at - 1]);
        var after = _at + 1 >= _text.Length || char.IsWhiteSpace(_text[_at + 1]);
        if (before && after)
        {
            return;
        }

        var left = _tokens[^1].Text;
        var right = OperandAt(_at + 1);
        if (sign == '+')
        {
            _source.Report(ProblemCatalogue.ConditionNotReadable, _at, _at + 1, $"A '+' stands between spaces: write '{left} + {right}'.", withLine: true);
            return;
        }

        var joined = _tokens[^1].Kind == TokenKind.Word ? $", or '{left}-{right}' if it is one id" : "";
        _source.Report(
            ProblemCatalogue.MinusWithoutSpaces,
            _at,
            _at + 1,
            $"A minus between two numbers stands between spaces: write '{left} - {right}' for the difference{joined}.");
    }

    /// <summary>The number or word behind a sign, for a message.</summary>
    private string OperandAt(int at)
    {
        var rest = _text.AsSpan(at).TrimStart();
        if (NumberScanner.Begins(rest))
        {
            var length = NumberScanner.Scan(rest).Length;
            var unit = rest[length..].TrimStart();
            var hasUnit = UnitScanner.Begins(unit) && UnitScanner.Scan(unit, _isId).Unit is not null;
            return hasUnit ? $"{rest[..length]} {unit[..UnitScanner.Scan(unit, _isId).Length]}" : rest[..length].ToString();
        }

        return rest.IsEmpty ? "..." : IsWordStart(rest[0]) ? _text.Substring(_text.Length - rest.Length, WordLength(_text.Length - rest.Length)) : "( ... )";
    }

    private static bool EndsOperand(Token token) =>
        token.Kind is TokenKind.Number or TokenKind.Broken || token.IsSign(")") || token is { Kind: TokenKind.Word, IsKeyword: false };

    private static bool IsWordStart(char first) => char.IsLetter(first) || first is '$' or '_';

    private int WordLength(int start)
    {
        var end = start + 1;
        while (end < _text.Length)
        {
            var belongs = IsWordPart(_text[end]) || (_text[end] == '-' && end + 1 < _text.Length && IsWordPart(_text[end + 1]));
            if (!belongs)
            {
                break;
            }

            end++;
        }

        return end - start;
    }

    private static bool IsWordPart(char part) => char.IsLetterOrDigit(part) || part is '$' or '_';

    private void Add(TokenKind kind, int length, double value = 0, Unit? unit = null)
    {
        _tokens.Add(new(kind, _text.Substring(_at, length), _at, value, unit));
        _at += length;
    }
}
