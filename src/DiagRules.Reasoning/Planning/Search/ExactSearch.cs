namespace DiagRules.Reasoning.Planning.Search;

/// <summary>
/// The best plan there is: depth-first AND/OR search with memory and branch and bound. An OR node chooses a step, an AND node weighs the answers.
/// </summary>
internal sealed class ExactSearch
{
    private const int MostMemories = 400_000;

    private readonly Board _board;
    private readonly Dictionary<(UInt128, int), Memory> _memory = [];
    private readonly List<Candidate[]> _candidates = [];
    private readonly double _slack;

    internal ExactSearch(Board board)
    {
        _board = board;
        // Differences below this are rounding; following them up would only cost time.
        _slack = board.Compiled.SpecialistCost * 1e-13;
    }

    /// <summary>Whether the work ran out; what was returned then means nothing.</summary>
    internal bool GaveUp { get; private set; }

    internal int Deepest { get; private set; }

    /// <summary>The least expected cost from a position if that is below the limit; otherwise some lower bound that is not below it.</summary>
    internal double Solve(in Position at, double limit, int depth)
    {
        if (at.Mass <= 0 || GaveUp)
        {
            return 0;
        }

        if (_memory.TryGetValue(at.Memo, out var known) && (known.IsExact || known.Bound >= limit))
        {
            return known.Bound;
        }

        var floor = Math.Max(at.Floor, known.Bound);
        if (floor >= limit)
        {
            return floor;
        }

        var (value, isExact) = Search(at, floor, limit, depth);
        if (_board.Meter.IsExhausted)
        {
            GaveUp = true;
        }
        else if (_memory.Count < MostMemories)
        {
            _memory[at.Memo] = new Memory(value, isExact);
        }

        return value;
    }

    /// <summary>The expected cost of a check and what is best after it, under the rules of <see cref="Solve"/>.</summary>
    internal double Check(in Position at, int check, double limit, int depth)
    {
        var opened = at.State.AfterCheck(check, out var cost);
        var total = cost * at.Mass;
        var outcomes = _board.Compiled.Checks[check].Outcomes;
        var floors = 0.0;
        foreach (var outcome in outcomes)
        {
            floors += Weights.Dot(at.Weights, outcome.Likelihood, opened.AfterOutcome(outcome).Floor);
        }

        for (var o = 0; o < outcomes.Length; o++)
        {
            var next = _board.EnterOutcome(at, check, o, opened, depth);
            floors -= next.Floor;
            total += Solve(next, limit - total - floors, depth + 1);
            _board.LeaveOutcome(check, o);
            if (total + floors >= limit)
            {
                return total + floors;
            }
        }

        return total;
    }

    /// <summary>The expected cost of a repair and what is best if it is in vain, under the rules of <see cref="Solve"/>.</summary>
    internal double Repair(in Position at, int repair, double limit, int depth)
    {
        var cost = at.State.RepairCosts[repair] * at.Mass;
        var next = _board.EnterRepair(at, repair, depth);
        var value = cost + Solve(next, limit - cost, depth + 1);
        _board.LeaveRepair(repair);
        return value;
    }

    private (double Value, bool IsExact) Search(in Position at, double floor, double limit, int depth)
    {
        Deepest = Math.Max(Deepest, depth);
        var best = _board.PolicyCost(at);
        if (best <= floor + _slack)
        {
            return (best, true);
        }

        var candidates = Candidates(at, depth, out var count);
        var bound = double.PositiveInfinity;
        for (var i = 0; i < count && !GaveUp; i++)
        {
            var cap = Math.Min(best, limit);
            if (candidates[i].AtLeast >= cap - _slack)
            {
                bound = Math.Min(bound, candidates[i].AtLeast);
                break;
            }

            var step = candidates[i].Step;
            var value = step < 0 ? Repair(at, ~step, cap, depth) : Check(at, step, cap, depth);
            (best, bound) = value < cap ? (value, bound) : (best, Math.Min(bound, value));
        }

        return best < limit ? (best, true) : (Math.Min(best, bound), false);
    }

    /// <summary>The steps that are possible, by their lower bounds.</summary>
    private Candidate[] Candidates(in Position at, int depth, out int count)
    {
        while (_candidates.Count <= depth)
        {
            _candidates.Add(new Candidate[_board.Compiled.Checks.Length + _board.Compiled.Repairs.Length]);
        }

        var candidates = _candidates[depth];
        count = 0;
        for (var c = 0; c < _board.Compiled.Checks.Length; c++)
        {
            if (_board.IsPlannable(c) && CheckAtLeast(at, c) is var atLeast && double.IsFinite(atLeast))
            {
                candidates[count++] = new Candidate(c, atLeast);
            }
        }

        for (var r = 0; r < _board.Compiled.Repairs.Length; r++)
        {
            if (!_board.Tried[r] && RepairAtLeast(at, r) is var atLeast && double.IsFinite(atLeast))
            {
                candidates[count++] = new Candidate(~r, atLeast);
            }
        }

        Array.Sort(candidates, 0, count);
        return candidates;
    }

    private double CheckAtLeast(in Position at, int check)
    {
        var opened = at.State.AfterCheck(check, out var cost);
        var atLeast = cost * at.Mass;
        foreach (var outcome in _board.Compiled.Checks[check].Outcomes)
        {
            _board.Meter.Spend(_board.Compiled.Width);
            atLeast += Weights.Dot(at.Weights, outcome.Likelihood, opened.AfterOutcome(outcome).Floor);
        }

        return atLeast;
    }

    private double RepairAtLeast(in Position at, int repair)
    {
        var compiled = _board.Compiled.Repairs[repair];
        if (!at.State.IsReady(compiled) || !Array.Exists(compiled.Cures, at.Cures))
        {
            return double.PositiveInfinity;
        }

        _board.Meter.Spend(_board.Compiled.Width);
        return (at.State.RepairCosts[repair] * at.Mass) + Weights.Dot(at.Weights, compiled.Keeps, at.State.AfterRepair(repair).Floor);
    }

    private readonly record struct Memory(double Bound, bool IsExact);

    /// <param name="Step">A check, or the complement of a repair.</param>
    /// <param name="AtLeast">Lower bound of the expected cost with this step first.</param>
    private readonly record struct Candidate(int Step, double AtLeast) : IComparable<Candidate>
    {
        public int CompareTo(Candidate other) => AtLeast.CompareTo(other.AtLeast) is var order && order != 0 ? order : Step.CompareTo(other.Step);
    }
}
