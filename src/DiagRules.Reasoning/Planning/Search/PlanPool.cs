namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Plans that were good somewhere, to be tried elsewhere for the price of a dot product. The least recently useful one makes room.</summary>
internal sealed class PlanPool(Board board)
{
    private const int Capacity = 32;

    private readonly PlanVector[] _plans = new PlanVector[Capacity];
    private readonly long[] _lastUse = new long[Capacity];
    private int _count;
    private long _uses;

    internal void Add(PlanVector plan)
    {
        var place = _count < Capacity ? _count++ : Array.IndexOf(_lastUse, _lastUse.Min());
        (_plans[place], _lastUse[place]) = (plan, ++_uses);
    }

    /// <summary>The cheapest of the plans that can be followed as they stand; null when there is none.</summary>
    internal PlanVector? Best(in Position at, out double value)
    {
        var best = -1;
        value = double.PositiveInfinity;
        for (var i = 0; i < _count; i++)
        {
            if (board.CanFollow(_plans[i], at.State) && Weights.Dot(at.Weights, _plans[i].Costs) is var cost && cost < value)
            {
                (best, value) = (i, cost);
            }
        }

        board.Meter.Spend(10 + (_count * (board.Compiled.Width + 16) / 16));
        if (best < 0)
        {
            return null;
        }

        _lastUse[best] = ++_uses;
        return _plans[best];
    }
}
