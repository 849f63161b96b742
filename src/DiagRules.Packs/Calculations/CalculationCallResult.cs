using DiagRules.Model.Problems;

namespace DiagRules.Packs.Calculations;

/// <summary>What came of reading a call: the call, or all that is wrong with it. Immutable.</summary>
public sealed record CalculationCallResult
{
    internal CalculationCallResult(CalculationCall? call, IReadOnlyList<Problem> problems)
    {
        Call = call;
        Problems = problems;
    }

    /// <summary>The call, or <see langword="null"/> when there are problems.</summary>
    public CalculationCall? Call { get; }

    /// <summary>All problems, in the order of the arguments.</summary>
    public IReadOnlyList<Problem> Problems { get; }
}
