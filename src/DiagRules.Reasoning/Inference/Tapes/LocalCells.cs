namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>What bears on each variable alone, multiplied together.</summary>
/// <remarks>
/// Likelihoods of one variable are multiplied with an exponent of their own per grade, so that hundreds of observations neither underflow nor lose one grade
/// against another.
/// </remarks>
internal readonly struct LocalCells(Tape tape, TapeMemory memory)
{
    /// <summary>Powers of two are taken out in steps of this many.</summary>
    private const int Step = 256;

    private static readonly double Small = Math.ScaleB(1, -Step);
    private static readonly double Large = Math.ScaleB(1, Step);

    /// <summary>Sets every cell to 1.</summary>
    public void Clear()
    {
        memory.FitLoading(tape);
        memory.Locals.AsSpan(0, tape.Locals[^1]).Fill(1);
        memory.LocalExponents.AsSpan(0, tape.Locals[^1]).Clear();
    }

    /// <summary>Multiplies one number into each state of a variable.</summary>
    public void Multiply(int variable, ReadOnlySpan<double> values, int stride)
    {
        var first = tape.Locals[variable];
        for (var i = first; i < tape.Locals[variable + 1]; i++)
        {
            var product = memory.Locals[i] * values[(i - first) * stride];
            if (product < Small && product > 0)
            {
                product *= Large;
                memory.LocalExponents[i]++;
            }

            memory.Locals[i] = product;
        }
    }

    /// <summary>Gives all states of a variable one exponent, the one that keeps the likeliest in range, and copies them to the tables.</summary>
    /// <param name="scale">Natural logarithm of the factor taken out.</param>
    /// <returns>False if some variable has no state left.</returns>
    public bool CopyAligned(out double scale)
    {
        scale = 0;
        for (var v = 0; v + 1 < tape.Locals.Length; v++)
        {
            var (from, to) = (tape.Locals[v], tape.Locals[v + 1]);
            var smallest = int.MaxValue;
            for (var i = from; i < to; i++)
            {
                smallest = memory.Locals[i] > 0 ? Math.Min(smallest, memory.LocalExponents[i]) : smallest;
            }

            if (from < to && smallest == int.MaxValue)
            {
                return false;
            }

            for (var i = from; i < to; i++)
            {
                var exponent = (smallest - memory.LocalExponents[i]) * Step;
                memory.Tables[i] = exponent == 0 ? memory.Locals[i] : Math.ScaleB(memory.Locals[i], exponent);
            }

            scale -= from < to ? smallest * Step * Math.Log(2) : 0;
        }

        return true;
    }
}
