using System.Numerics;

namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>How large a table the next action on each variable would make.</summary>
internal sealed class TapeCosts
{
    private readonly List<TapeVariable> _variables;
    private readonly double[] _cost;
    private readonly ulong[] _whole;
    private readonly ulong[] _partial;

    public TapeCosts(TapeDraft draft)
    {
        _variables = draft.Variables;
        _cost = new double[_variables.Count];
        _whole = new ulong[draft.Words];
        _partial = new ulong[draft.Words];
        _variables.ForEach(Refresh);
    }

    /// <summary>The variable to act on next, or null if none may be. Ties go to the smaller number, so that the same question always gets the same tape.</summary>
    public TapeVariable? Cheapest()
    {
        TapeVariable? best = null;
        foreach (var variable in _variables)
        {
            if (!variable.IsGone && double.IsFinite(_cost[variable.Number]) && (best is null || _cost[variable.Number] < _cost[best.Number]))
            {
                best = variable;
            }
        }

        return best;
    }

    /// <summary>Brings the costs of these variables up to date, and of those that could not be acted on before.</summary>
    public void Refresh(ReadOnlySpan<ulong> touched)
    {
        foreach (var variable in _variables)
        {
            var isTouched = (touched[variable.Number >> 6] >> (variable.Number & 63) & 1) == 1;
            if (!variable.IsGone && (isTouched || double.IsInfinity(_cost[variable.Number])))
            {
                Refresh(variable);
            }
        }
    }

    public double StatesOfUnion(TapeValue first, TapeValue second)
    {
        var states = 1.0;
        for (var w = 0; w < _whole.Length; w++)
        {
            states *= StatesOf(w, first.All[w] | second.All[w]);
        }

        return states;
    }

    /// <summary>Infinite while the action would join a table that holds a node partly gathered with one that reads its grade.</summary>
    private void Refresh(TapeVariable variable)
    {
        ref var cost = ref _cost[variable.Number];
        cost = double.PositiveInfinity;
        if (variable.IsGathering && HasGatheringParent(variable))
        {
            return;
        }

        Unite(variable);
        var cells = 1.0;
        for (var w = 0; w < _whole.Length; w++)
        {
            if ((_whole[w] & _partial[w]) != 0)
            {
                return;
            }

            cells *= StatesOf(w, _whole[w] | _partial[w]);
        }

        cost = cells;
    }

    private void Unite(TapeVariable variable)
    {
        Array.Clear(_whole);
        Array.Clear(_partial);
        foreach (var value in variable.Uses)
        {
            if (!variable.IsGathering || value.IsPartial(variable))
            {
                for (var w = 0; w < _whole.Length; w++)
                {
                    _whole[w] |= value.All[w] & ~value.Partial[w];
                    _partial[w] |= value.Partial[w];
                }
            }
        }
    }

    private static bool HasGatheringParent(TapeVariable variable)
    {
        foreach (var parent in variable.Parents)
        {
            if (parent.IsGathering)
            {
                return true;
            }
        }

        return false;
    }

    private double StatesOf(int word, ulong bits)
    {
        var states = 1.0;
        for (; bits != 0; bits &= bits - 1)
        {
            states *= _variables[(word << 6) + BitOperations.TrailingZeroCount(bits)].States;
        }

        return states;
    }
}
