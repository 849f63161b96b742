namespace DiagRules.Reasoning.Planning.Search;

/// <summary>
/// Looks at every first step, then follows up the promising ones closer and closer, then lets those that come close make more of what they tell.
/// </summary>
internal sealed class RootRounds
{
    /// <summary>What the first round leaves unsaved at a node, as a share of the expected cost.</summary>
    private const double FirstTolerance = 0.08;

    /// <summary>Rounds get closer by this factor where the work left allows it.</summary>
    private const double Closer = 0.25;

    /// <summary>From this share of the expected cost on it gains more to try other steps than to look closer still.</summary>
    private const double CloseEnough = 1e-4;

    /// <summary>The share of the specialist's price that the first look leaves unsaved after each answer.</summary>
    private const double FirstLook = 0.02;

    /// <summary>The share of the work for the rounds; the rest is for steps that come close to the best.</summary>
    private const double ShareOfRounds = 0.65;

    /// <summary>How many of these there may be.</summary>
    private const int Challengers = 6;

    private const int MostRounds = 40;

    private const int RoundsBeforeExact = 3;

    /// <summary>How many first steps each round follows up, the last number again and again.</summary>
    private static readonly int[] Candidates = [8, 4, 2, 1];

    private readonly WorkMeter _meter;
    private readonly double _specialist;
    private readonly Lookahead _lookahead;
    private readonly Position _start;
    private readonly List<RootStep> _steps;
    private PlanVector? _best;
    private double _bestValue;
    private double _lastTolerance;
    private double _lastWork;

    internal RootRounds(Board board, List<RootStep> steps)
    {
        _meter = board.Meter;
        _specialist = board.Compiled.SpecialistCost;
        _lookahead = new Lookahead(board);
        _start = board.Start;
        _steps = steps;
    }

    private double LeastTotal => _steps.Min(s => s.Total);

    /// <summary>One step ahead for everything, whatever the budget.</summary>
    internal void LookOnce()
    {
        var limit = _meter.Limit;
        _meter.Limit = long.MinValue;
        _lookahead.Restart(FirstLook * _specialist, 1);
        foreach (var step in _steps.Where(s => !s.IsExact))
        {
            Follow(step, guide: null);
        }

        _meter.Limit = limit;
    }

    /// <summary>Spends the work that is left; whether the best step is proven to be the best.</summary>
    internal bool Run(RootExact? exact)
    {
        var limit = _meter.Limit;
        _meter.Limit = _meter.Spent + (long)((limit - _meter.Spent) * ShareOfRounds);
        var (tolerance, width) = (FirstTolerance * LeastTotal, 1);
        for (var round = 0; round < MostRounds && !_meter.IsExhausted; round++)
        {
            // Good plans in hand first: they cut most of the exact search short.
            if (round == RoundsBeforeExact && exact is not null && exact.TrySolve(limit))
            {
                return true;
            }

            tolerance = Deepen(tolerance, width, round);
            if (tolerance < CloseEnough * LeastTotal)
            {
                (tolerance, width) = (FirstTolerance * LeastTotal, width + 1);
            }
        }

        _meter.Limit = limit;
        Reconcile();
        Challenge();
        Reconcile();
        AllowLooksBeforeTheBest();
        return false;
    }

    /// <summary>One round; returns a closer tolerance for the next that the work left is likely to suffice for.</summary>
    private double Deepen(double tolerance, int width, int round)
    {
        var before = _meter.Spent;
        Follow(Chosen(CandidatesOf(round)), tolerance, width);
        (_lastTolerance, _lastWork) = (tolerance, (double)(_meter.Spent - before) / CandidatesOf(round));
        var left = Math.Max(1.0, _meter.Limit - _meter.Spent);
        return tolerance * Math.Max(Closer, Math.Min(0.7, _lastWork * CandidatesOf(round + 1) / left));
    }

    private static int CandidatesOf(int round) => Candidates[Math.Min(round, Candidates.Length - 1)];

    /// <summary>The first steps to follow up: those with the best plans known; in the first round also those that tell most per cost.</summary>
    private List<RootStep> Chosen(int count)
    {
        var able = _steps.Where(IsAble);
        if (count < Candidates[0])
        {
            return [.. able.OrderBy(s => s.Total).Take(count)];
        }

        var telling = _lookahead.Telling(_start, count / 2);
        return [.. able.OrderBy(s => !telling.Contains(s.Kind == StepKind.Check ? s.Compiled : ~s.Compiled)).ThenBy(s => s.Total).Take(count)];
    }

    /// <summary>Whatever is done first, the best plan known can be followed after it.</summary>
    private void Reconcile()
    {
        if (_best is not { } guide)
        {
            return;
        }

        foreach (var step in _steps.Where(s => !s.IsExact))
        {
            step.Improve(
                step.Kind == StepKind.Check ? _lookahead.CheckThen(_start, step.Compiled, guide) : _lookahead.RepairThen(_start, step.Compiled, guide),
                step.Depth);
        }
    }

    /// <summary>
    /// Where a look closes no access and makes no check pointless, everything that the best plan does can still be done after it, at no higher price.
    /// </summary>
    private void AllowLooksBeforeTheBest()
    {
        var least = LeastTotal;
        foreach (var step in _steps.Where(s => s.Kind == StepKind.Check && !s.IsExact && _lookahead.ObstructsNothing(s.Compiled)))
        {
            step.Improve(step.Cost + least, step.Depth);
        }
    }

    /// <summary>Steps that come close to the best once its plan is followed after them get the chance to make more of what they tell.</summary>
    private void Challenge()
    {
        var best = _steps.MinBy(s => s.Total);
        List<RootStep> steps = [.. _steps.Where(s => s != best && IsAble(s) && !s.IsExact).OrderBy(s => s.Total).Take(Challengers)];
        var share = Math.Max(1.0, _meter.Limit - _meter.Spent) / Math.Max(1, steps.Count);
        // The work grows about as the tolerance falls.
        Follow(steps, _lastTolerance * Math.Max(1, _lastWork / share), 1);
    }

    private void Follow(List<RootStep> steps, double tolerance, int width)
    {
        var limit = _meter.Limit;
        _lookahead.Restart(tolerance, width);
        for (var i = 0; i < steps.Count && !_meter.IsExhausted; i++)
        {
            // What one step leaves over goes to the next.
            _meter.Limit = _meter.Spent + ((limit - _meter.Spent) / (steps.Count - i));
            Follow(steps[i], _best);
            _meter.Limit = limit;
        }
    }

    private void Follow(RootStep step, PlanVector? guide)
    {
        _lookahead.Deepest = 1;
        PlanVector? plan;
        var total = step.Kind == StepKind.Check
            ? _lookahead.Check(_start, step.Compiled, guide, double.PositiveInfinity, 1, out plan)
            : _lookahead.Repair(_start, step.Compiled, guide, 1, out plan);
        step.Improve(total, _lookahead.Deepest);
        var value = Weights.Dot(_start.Weights, plan!.Costs);
        if (_best is null || value < _bestValue)
        {
            (_best, _bestValue) = (plan, value);
        }
    }

    private static bool IsAble(RootStep step) => step.Kind != StepKind.Specialist && !step.IsIdle;
}
