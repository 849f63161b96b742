namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Plans that were good somewhere, to be tried elsewhere for the price of a dot product. The least recently useful one makes room.</summary>
internal sealed class PlanPool(Board board)
{
    private const int Capacity = 96;

    private readonly List<PlanVector> _plans = new(Capacity);
    private readonly List<long> _lastUse = new(Capacity);
    private readonly List<int> _usable = new(Capacity);
    private long _uses;

    /// <summary>What one look at a plan costs.</summary>
    private int WorkOfLooking => 1 + (board.Compiled.Width / 16);

    internal void Add(PlanVector plan)
    {
        if (_plans.Count < Capacity)
        {
            _plans.Add(plan);
            _lastUse.Add(++_uses);
            return;
        }

        var oldest = 0;
        for (var i = 1; i < Capacity; i++)
        {
            oldest = _lastUse[i] < _lastUse[oldest] ? i : oldest;
        }

        (_plans[oldest], _lastUse[oldest]) = (plan, ++_uses);
    }

    /// <summary>Finds out which plans can be followed from a position; the other members then look among these only.</summary>
    internal void Select(OpenState state)
    {
        _usable.Clear();
        var closed = board.ClosedChecks();
        var tried = board.TriedRepairs();
        for (var i = 0; i < _plans.Count; i++)
        {
            if (!_plans[i].Checks.Overlaps(closed) && !_plans[i].Repairs.Overlaps(tried) && IsOpenEnough(_plans[i].Start, state))
            {
                _usable.Add(i);
            }
        }
    }

    /// <summary>The cheapest plan for some weights.</summary>
    internal (PlanVector? Plan, double Value) Best(ReadOnlySpan<double> weights)
    {
        var (best, value) = (-1, double.PositiveInfinity);
        board.Meter.Spend(_usable.Count * WorkOfLooking);
        foreach (var i in _usable)
        {
            var cost = Weights.Dot(weights, _plans[i].Costs);
            (best, value) = cost < value ? (i, cost) : (best, value);
        }

        if (best < 0)
        {
            return (null, value);
        }

        _lastUse[best] = ++_uses;
        return (_plans[best], value);
    }

    /// <summary>The least that a plan without the given check costs after one of its answers; infinite when there is none.</summary>
    internal double BestWithoutCheck(ReadOnlySpan<double> weights, int check) => Least(weights, i => !_plans[i].Checks.Contains(check));

    /// <summary>The least that a plan without the given repair costs once that was in vain; infinite when there is none.</summary>
    internal double BestWithoutRepair(ReadOnlySpan<double> weights, int repair) => Least(weights, i => !_plans[i].Repairs.Contains(repair));

    private double Least(ReadOnlySpan<double> weights, Predicate<int> isUsable)
    {
        var value = double.PositiveInfinity;
        board.Meter.Spend(_usable.Count * WorkOfLooking);
        foreach (var i in _usable)
        {
            if (isUsable(i))
            {
                value = Math.Min(value, Weights.Dot(weights, _plans[i].Costs));
            }
        }

        return value;
    }

    /// <summary>With more open than it reckons with, a plan costs at most what it says; where accesses close each other that does not hold.</summary>
    private bool IsOpenEnough(OpenState start, OpenState state) =>
        ReferenceEquals(start, state) || (board.States.Masks is not null && (start.Contents.Mask & ~state.Contents.Mask) == 0);
}
