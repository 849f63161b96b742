using DiagRules.Model.Calculations;

namespace DiagRules.Plugins;

/// <summary>A thread that computes what it is handed, one call after the other. One caller at a time.</summary>
internal sealed class GuardThread
{
    private readonly object _turn = new();
    private State _state = State.Idle;
    private double[] _arguments = [];
    private int _count;
    private ICalculation? _calculation;
    private CalculationResult _result;

    private GuardThread()
    {
    }

    private enum State
    {
        Idle,
        Asked,
        Answered,
        Ended,
    }

    public static GuardThread Start(string plugin)
    {
        var guarded = new GuardThread();
        new Thread(guarded.Serve) { IsBackground = true, Name = $"DiagRules plugin '{plugin}'" }.UnsafeStart();
        return guarded;
    }

    /// <summary>Computes within the limit; <see langword="null"/> when it took too long, and then the thread is given up.</summary>
    public CalculationResult? Compute(ICalculation calculation, ReadOnlySpan<double> arguments, TimeSpan limit)
    {
        lock (_turn)
        {
            Hand(calculation, arguments);
            var end = Environment.TickCount64 + (long)Math.Ceiling(limit.TotalMilliseconds);
            while (_state == State.Asked)
            {
                var left = end - Environment.TickCount64;
                if (left <= 0)
                {
                    _state = State.Ended;
                    return null;
                }

                Monitor.Wait(_turn, (int)left);
            }

            _state = State.Idle;
            return _result;
        }
    }

    /// <summary>Ends the thread as soon as it is idle.</summary>
    public void End()
    {
        lock (_turn)
        {
            _state = State.Ended;
            Monitor.PulseAll(_turn);
        }
    }

    private void Hand(ICalculation calculation, ReadOnlySpan<double> arguments)
    {
        if (_arguments.Length < arguments.Length)
        {
            _arguments = new double[arguments.Length];
        }

        arguments.CopyTo(_arguments);
        _count = arguments.Length;
        _calculation = calculation;
        _state = State.Asked;
        Monitor.PulseAll(_turn);
    }

    // No local of these three holds on to the plugin between calls, or the idle thread would keep it from being unloaded.
    private void Serve()
    {
        while (IsAsked())
        {
            Answer();
        }
    }

    private bool IsAsked()
    {
        lock (_turn)
        {
            while (_state is State.Idle or State.Answered)
            {
                Monitor.Wait(_turn);
            }

            return _state == State.Asked;
        }
    }

    private void Answer()
    {
        var result = _calculation!.ComputeContained(_arguments.AsSpan(0, _count));
        lock (_turn)
        {
            _calculation = null;
            if (_state == State.Asked)
            {
                _result = result;
                _state = State.Answered;
                Monitor.PulseAll(_turn);
            }
        }
    }
}
