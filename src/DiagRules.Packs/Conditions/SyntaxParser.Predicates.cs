using System.Collections.Immutable;
using DiagRules.Model.Problems;

namespace DiagRules.Packs.Conditions;

/// <summary>The tests of the condition language: <c>known</c>, <c>is</c> and comparisons.</summary>
internal sealed partial class SyntaxParser
{
    private ConditionSyntax? Test()
    {
        if (Current.IsWord(Keywords.Known) || Current.IsWord(Keywords.Unknown))
        {
            return KnownTest();
        }

        return Current is { Kind: TokenKind.Word, IsKeyword: false } && _tokens[_at + 1].IsWord(Keywords.Is) ? GradeTest() : Comparison();
    }

    private KnownSyntax? KnownTest()
    {
        var keyword = Current;
        _at++;
        if (Current is not { Kind: TokenKind.Word, IsKeyword: false })
        {
            return Fail<KnownSyntax>($"a reading, finding or cause behind '{keyword.Text}'");
        }

        var name = Name();
        return new KnownSyntax(keyword.Text == Keywords.Known, name, keyword.Start, name.End);
    }

    private GradeTestSyntax? GradeTest()
    {
        var name = Name();
        _at++;
        var isNot = Current.IsWord(Keywords.Not);
        _at += isNot ? 1 : 0;
        var grades = ImmutableArray.CreateBuilder<NameSyntax>();
        var reach = GradeReach.Named;
        while (true)
        {
            if (Current is not { Kind: TokenKind.Word, IsKeyword: false })
            {
                return Fail<GradeTestSyntax>($"a grade of '{name.Text}'");
            }

            grades.Add(Name());
            if (!Current.IsWord(Keywords.Or))
            {
                break;
            }

            var next = _tokens[_at + 1];
            if (next.IsWord(Keywords.Worse) || next.IsWord(Keywords.Better))
            {
                if (grades.Count > 1)
                {
                    _at++;
                    return Fail<GradeTestSyntax>($"another grade ('or {next.Text}' goes with one grade alone)");
                }

                reach = next.Text == Keywords.Worse ? GradeReach.OrWorse : GradeReach.OrBetter;
                _at += 2;
                break;
            }

            if (BeginsTest(_at + 1))
            {
                break;
            }

            _at++;
        }

        var test = new GradeTestSyntax(name, isNot, grades.DrainToImmutable(), reach, name.Start, LastEnd);
        return isNot && test.Grades.Length > 1 ? IsNotOr(test) : test;
    }

    /// <summary><c>x is not a or b</c> is read one way by one half of the people and the other way by the other.</summary>
    private GradeTestSyntax? IsNotOr(GradeTestSyntax test)
    {
        var name = test.Name.Text;
        var words = test.Grades.Select(grade => grade.Text).ToList();
        _source.Report(
            ProblemCatalogue.IsNotOr,
            test.Start,
            test.End,
            $"'{_source.Text(test.Start, test.End)}' can be read in two ways: write 'not ({name} is {string.Join(" or ", words)})' if none of them may be, " +
            $"or '{name} is not {words[0]} or {string.Join(" or ", words.Skip(1).Select(word => $"{name} is {word}"))}' if only the first may not be.");
        return null;
    }

    /// <summary>Whether a test of its own begins here, so that an <c>or</c> before it does not take one more grade.</summary>
    private bool BeginsTest(int at)
    {
        var token = _tokens[Math.Min(at, _tokens.Length - 1)];
        return token.Kind switch
        {
            TokenKind.Number or TokenKind.Broken => true,
            TokenKind.Sign => token.Text is "(" or "-",
            TokenKind.Word when token.IsKeyword => token.Text is Keywords.Not or Keywords.Known or Keywords.Unknown or Keywords.Any or Keywords.Every,
            TokenKind.Word => FollowsName(_tokens[at + 1]),
            _ => false,
        };
    }

    private static bool FollowsName(Token token) =>
        token.IsWord(Keywords.Is) || token.IsComparator || (token.Kind == TokenKind.Sign && token.Text is "+" or "-" or "*" or "/" or "(");

    private ConditionSyntax? Comparison()
    {
        var first = Sum();
        if (first is null)
        {
            return null;
        }

        if (!Current.IsComparator)
        {
            return Current.IsWord(Keywords.Is) ? NumberTestedWithIs(first) : Fail<ConditionSyntax>(Continuation(first));
        }

        var terms = ImmutableArray.Create(first);
        var comparators = ImmutableArray<Token>.Empty;
        while (Current.IsComparator && comparators.Length < 2)
        {
            comparators = comparators.Add(Current);
            _at++;
            var next = Sum();
            if (next is null)
            {
                return null;
            }

            terms = terms.Add(next);
        }

        var test = new ComparisonSyntax(terms, comparators, first.Start, LastEnd);
        return comparators.Length == 2 && !RunsOneWay(comparators) ? BadChain(test) : test;
    }

    private static string Continuation(TermSyntax term) => term is NameSyntax
        ? "'is' or a comparison such as '> 5 V'"
        : "'+', '-', '*', '/' or a comparison such as '> 5 V'";

    private ConditionSyntax? NumberTestedWithIs(TermSyntax term)
    {
        _source.Report(
            ProblemCatalogue.GradedAsNumber,
            term.Start,
            Current.End,
            $"'{_source.Text(term.Start, term.End)}' is a number, and 'is' tests the grade of a finding or cause; compare the number, such as with '>'.");
        return null;
    }

    private static bool RunsOneWay(ImmutableArray<Token> comparators) =>
        comparators.All(sign => sign.Text[0] == '<') || comparators.All(sign => sign.Text[0] == '>');

    private ConditionSyntax? BadChain(ComparisonSyntax chain)
    {
        var terms = chain.Terms.Select(term => _source.Text(term.Start, term.End)).ToList();
        var signs = chain.Comparators.Select(sign => sign.Text).ToList();
        var why = signs.Exists(sign => sign is "=" or "!=") ? "holds an equals sign" : "runs both ways";
        _source.Report(
            ProblemCatalogue.BadChain,
            chain.Start,
            chain.End,
            $"The chain '{_source.Text(chain.Start, chain.End)}' {why}: write '{terms[0]} {signs[0]} {terms[1]} and {terms[1]} {signs[1]} {terms[2]}'.");
        return null;
    }

    private NameSyntax Name()
    {
        var name = new NameSyntax(Current.Text, Current.Start);
        _at++;
        return name;
    }
}
