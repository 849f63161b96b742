using System.Collections.Immutable;

namespace DiagRules.Packs.Conditions;

/// <summary>The numbers of the condition language: sums, products, calls.</summary>
internal sealed partial class SyntaxParser
{
    private const string Operand = "a number, a reading, a parameter or a calculation";
    private const string Beginning = "a test, which begins with an id, a number, a calculation, 'not', 'known', 'unknown', 'any', 'every' or '('";

    private TermSyntax? Sum() => Chain("+", "-", Product);

    private TermSyntax? Product() => Chain("*", "/", Unary);

    /// <summary>Operands joined by either of two signs, from left to right.</summary>
    private TermSyntax? Chain(string sign, string otherSign, Func<TermSyntax?> readOperand)
    {
        var left = readOperand();
        while (left is not null && (Current.IsSign(sign) || Current.IsSign(otherSign)))
        {
            var operation = Current.Text[0];
            _at++;
            var right = readOperand();
            left = right is null ? null : new BinarySyntax(operation, left, right, left.Start, LastEnd);
        }

        return left;
    }

    private TermSyntax? Unary()
    {
        switch (Current)
        {
            case { Kind: TokenKind.Sign, Text: "-" }:
                return Nested(Negated);
            case { Kind: TokenKind.Sign, Text: "(" }:
                return Nested(BracketedSum);
            case { Kind: TokenKind.Number }:
                _at++;
                return new NumberSyntax(_tokens[_at - 1]);
            case { Kind: TokenKind.Broken }:
                _at++;
                return new BrokenTerm(_tokens[_at - 1].Start, LastEnd);
            case { Kind: TokenKind.Word, IsKeyword: false }:
                return _tokens[_at + 1].IsSign("(") ? Nested(Call) : Name();
            default:
                return Fail<TermSyntax>(BeginsAnew() ? Beginning : Operand);
        }
    }

    private bool BeginsAnew() => _at == 0 || _tokens[_at - 1].IsKeyword;

    /// <summary>The sign of a number belongs to it: <c>-5 degC</c> is a point on the scale, not the opposite of one.</summary>
    private TermSyntax? Negated()
    {
        var start = Current.Start;
        _at++;
        if (Current.Kind == TokenKind.Number)
        {
            var number = Current;
            _at++;
            return new NumberSyntax(number with { Start = start, Text = _source.Text(start, number.End), Value = -number.Value });
        }

        var operand = Unary();
        return operand is null ? null : new NegatedSyntax(operand, start, LastEnd);
    }

    private TermSyntax? BracketedSum()
    {
        _at++;
        var inner = Sum();
        return inner is not null && Close("'+', '-', '*', '/' or ')'") ? inner : null;
    }

    private CallSyntax? Call()
    {
        var name = Name();
        _at++;
        var arguments = ImmutableArray.CreateBuilder<ArgumentSyntax>();
        while (!Current.IsSign(")") || arguments.Count > 0)
        {
            var argumentName = Current is { Kind: TokenKind.Word, IsKeyword: false } && _tokens[_at + 1].IsSign(":") ? Name() : null;
            _at += argumentName is null ? 0 : 1;
            var value = Sum();
            if (value is null)
            {
                return null;
            }

            arguments.Add(new(argumentName, value));
            if (!Current.IsSign(","))
            {
                break;
            }

            _at++;
        }

        return Close("',' or ')'") ? new CallSyntax(name, arguments.DrainToImmutable(), name.Start, LastEnd) : null;
    }
}
