namespace DiagRules.Reasoning.Planning.Search;

/// <summary>Plans that were good somewhere, to be tried elsewhere for the price of a dot product. The least recently useful one makes room.</summary>
internal sealed class PlanPool
{
    private const int Capacity = 48;

    private readonly Board _board;
    private readonly int _width;
    private readonly PlanVector[] _plans = new PlanVector[Capacity];
    private readonly long[] _lastUse = new long[Capacity];
    private readonly int[] _usable = new int[Capacity];
    private readonly double[] _products;
    private readonly int[] _rows = new int[Capacity];
    private int _count;
    private int _usableCount;
    private int _rowCount;
    private long _uses;

    internal PlanPool(Board board)
    {
        _board = board;
        _width = board.Compiled.Width;
        _products = new double[Capacity * _width];
    }

    internal void Add(PlanVector plan)
    {
        var place = _count < Capacity ? _count++ : Array.IndexOf(_lastUse, _lastUse.Min());
        (_plans[place], _lastUse[place]) = (plan, ++_uses);
    }

    /// <summary>Finds the plans that can be followed from a position; returns the cheapest. The other members then look among these.</summary>
    internal PlanVector? Select(in Position at, out double value)
    {
        _usableCount = 0;
        var (best, closed, tried) = (-1, _board.ClosedChecks(), _board.TriedRepairs());
        value = double.PositiveInfinity;
        for (var i = 0; i < _count; i++)
        {
            if (_plans[i].Checks.Overlaps(closed) || _plans[i].Repairs.Overlaps(tried) || !IsOpenEnough(_plans[i].Start, at.State))
            {
                continue;
            }

            var cost = Weights.Multiply(at.Weights, _plans[i].Costs, _products.AsSpan(_usableCount * _width, _width));
            (best, value) = cost < value ? (i, cost) : (best, value);
            _usable[_usableCount++] = i;
        }

        _board.Meter.Spend(WorkOf(_count));
        if (best < 0)
        {
            return null;
        }

        _lastUse[best] = ++_uses;
        return _plans[best];
    }

    /// <summary>Leaves out the plans with a check; false when none is left.</summary>
    internal bool LeaveOutCheck(int check)
    {
        _rowCount = 0;
        for (var i = 0; i < _usableCount; i++)
        {
            if (!_plans[_usable[i]].Checks.Contains(check))
            {
                _rows[_rowCount++] = i * _width;
            }
        }

        return _rowCount > 0;
    }

    /// <summary>Leaves out the plans with a repair; false when none is left.</summary>
    internal bool LeaveOutRepair(int repair)
    {
        _rowCount = 0;
        for (var i = 0; i < _usableCount; i++)
        {
            if (!_plans[_usable[i]].Repairs.Contains(repair))
            {
                _rows[_rowCount++] = i * _width;
            }
        }

        return _rowCount > 0;
    }

    /// <summary>What the cheapest of the plans that are left costs on the selected weights times these factors.</summary>
    internal double Least(ReadOnlySpan<double> factors)
    {
        _board.Meter.Spend(WorkOf(_rowCount));
        return Weights.LeastDot(factors, _products, _rows.AsSpan(0, _rowCount));
    }

    private int WorkOf(int looks) => 10 + (looks * (_width + 16) / 16);

    /// <summary>With more open than it reckons with, a plan costs at most what it says; where accesses close each other that does not hold.</summary>
    private bool IsOpenEnough(OpenState start, OpenState state) =>
        ReferenceEquals(start, state) || (_board.States.Masks is not null && (start.Contents.Mask & ~state.Contents.Mask) == 0);
}
