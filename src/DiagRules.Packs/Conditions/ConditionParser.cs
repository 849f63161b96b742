using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Conditions;

/// <summary>
/// Reads conditions and terms: first their words, then what the words mean in one pack. Every problem goes to the sink; what comes out
/// is complete and right, or <see langword="null"/>.
/// </summary>
/// <param name="symbols">What ids mean.</param>
/// <param name="problems">Where problems go.</param>
/// <param name="limits">How large a condition may be.</param>
internal sealed class ConditionParser(ISymbols symbols, ProblemSink problems, ConditionLimits? limits = null)
{
    private readonly ConditionLimits _limits = limits ?? ConditionLimits.Default;

    /// <summary>Reads a condition.</summary>
    public Condition? ReadCondition(PlacedText text)
    {
        if (IsTooLong(text))
        {
            return null;
        }

        var source = new ConditionSource(text, problems);
        var before = problems.Count;
        var syntax = SyntaxParser.ReadCondition(source, _limits, IsId);
        var condition = new ConditionBinder(new BindingScope(symbols, source, _limits)).Bind(syntax);
        return problems.Count == before ? condition : null;
    }

    /// <summary>Reads a number: what stands behind <c>from</c>, or a limit.</summary>
    /// <param name="text">The text.</param>
    /// <param name="expected">What it must measure; <see langword="null"/> for anything.</param>
    public Term? ReadTerm(PlacedText text, TermType? expected = null)
    {
        if (IsTooLong(text))
        {
            return null;
        }

        var source = new ConditionSource(text, problems);
        var before = problems.Count;
        var syntax = SyntaxParser.ReadTerm(source, _limits, IsId);
        var term = new TermBinder(new BindingScope(symbols, source, _limits)).Bind(syntax);
        return problems.Count > before || term is null ? null
            : expected is null || Values.ExpectedType.IsMet(text, term.Type, expected.Value, problems) ? term
            : null;
    }

    private bool IsId(string word) => symbols.Find(word) is not null;

    private bool IsTooLong(PlacedText text)
    {
        if (text.Value.Length <= _limits.Length)
        {
            return false;
        }

        problems.Add(
            ProblemCatalogue.LimitExceeded,
            text.At(0, 0),
            $"The condition has {text.Value.Length} characters, and {_limits.Length} are allowed; " +
            "split it into findings of its own (setting 'ConditionLength').");
        return true;
    }
}
