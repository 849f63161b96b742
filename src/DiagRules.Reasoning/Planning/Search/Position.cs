namespace DiagRules.Reasoning.Planning.Search;

/// <summary>What is believed and open at one point of a plan.</summary>
/// <param name="Weights">Unnormalised weights of the hypotheses.</param>
/// <param name="Mass">Their sum: the probability of coming here.</param>
/// <param name="State">What is open.</param>
/// <param name="Key">
/// Stands for the answers had and the repairs tried, in whatever order. Two of these are the same with a probability below 1e-25 when they should differ.
/// </param>
internal readonly record struct Position(double[] Weights, double Mass, OpenState State, UInt128 Key)
{
    /// <summary>What a memory keeps this position under.</summary>
    internal (UInt128 Key, int State) Memo => (Key, State.Id);

    /// <summary>A lower bound of the expected cost from here (see <see cref="CostFloors"/>).</summary>
    internal double Floor => Search.Weights.Dot(Weights, State.Floor);

    /// <summary>Whether a repair with this cure would put anything right here.</summary>
    internal bool Cures(Cure cure) => Weights[cure.Cause] > 0;
}
