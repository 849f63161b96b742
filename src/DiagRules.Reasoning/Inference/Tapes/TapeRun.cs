using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>Runs a tape forward for the probability of the evidence, and backward for its derivatives.</summary>
/// <remarks>
/// Every number is a sum of products of probabilities, forward and backward, so relative errors stay near the rounding of a double whatever the evidence.
/// </remarks>
/// <typeparam name="T">Numbers of one cell.</typeparam>
/// <typeparam name="TLanes">How they are added and multiplied.</typeparam>
internal readonly ref struct TapeRun<T, TLanes>
    where T : struct
    where TLanes : ILanes<T>
{
    /// <summary>A message whose largest number is outside these bounds is scaled by a power of two, which rounds nothing.</summary>
    private const double Small = 1.0 / (1L << 32);
    private const double Large = 1L << 32;

    private readonly Tape _tape;
    private readonly Span<T> _cells;
    private readonly Span<T> _derivatives;
    private readonly Span<T> _scales;

    public TapeRun(Tape tape, TapeMemory memory)
    {
        memory.FitRun(tape, Lanes);
        _tape = tape;
        _cells = MemoryMarshal.Cast<double, T>(memory.Cells.AsSpan())[..tape.CellCount];
        _derivatives = MemoryMarshal.Cast<double, T>(memory.Derivatives.AsSpan())[..tape.CellCount];
        _scales = MemoryMarshal.Cast<double, T>(memory.Scales.AsSpan())[..tape.Steps.Length];
    }

    public static int Lanes => Unsafe.SizeOf<T>() / sizeof(double);

    /// <summary>The cells as numbers, lane beside lane.</summary>
    public Span<double> Numbers => MemoryMarshal.Cast<T, double>(_cells);

    public ReadOnlySpan<double> Derivatives => MemoryMarshal.Cast<T, double>(_derivatives);

    /// <summary>Sets the same tables in every lane.</summary>
    public void Load(ReadOnlySpan<double> tables)
    {
        for (var cell = 0; cell < tables.Length; cell++)
        {
            _cells[cell] = TLanes.Broadcast(tables[cell]);
        }
    }

    /// <summary>Works every step out.</summary>
    /// <param name="logs">Natural logarithm of the answer in each lane; negative infinity if it is 0.</param>
    public void Forward(Span<double> logs)
    {
        Span<double> exponents = stackalloc double[Lanes];
        exponents.Clear();
        for (var i = 0; i < _tape.Steps.Length; i++)
        {
            ref readonly var step = ref _tape.Steps[i];
            _cells.Slice(step.Cells.Offset, step.Cells.Count).Clear();
            Multiply(step);
            Add(step.Cells);
            _scales[i] = TLanes.Broadcast(1);
            if (step.IsMessage)
            {
                Rescale(i, exponents);
            }
        }

        for (var lane = 0; lane < logs.Length; lane++)
        {
            var product = new Elimination.LogProduct();
            foreach (var cell in _tape.Results)
            {
                product.Multiply(Numbers[(cell * Lanes) + lane]);
            }

            logs[lane] = product.Log - (exponents[lane] * Math.Log(2));
        }
    }

    /// <summary>After <see cref="Forward"/>: the derivative of the answer's logarithm by every cell, up to the powers of two taken out.</summary>
    public void Backward()
    {
        _derivatives.Clear();
        var numbers = Numbers;
        var derivatives = MemoryMarshal.Cast<T, double>(_derivatives);
        foreach (var cell in _tape.Results)
        {
            for (var lane = cell * Lanes; lane < (cell + 1) * Lanes; lane++)
            {
                derivatives[lane] = numbers[lane] > 0 ? 1 / numbers[lane] : 0;
            }
        }

        for (var i = _tape.Steps.Length - 1; i >= 0; i--)
        {
            ref readonly var step = ref _tape.Steps[i];
            if (step.IsLeftActive || step.IsRightActive)
            {
                Unscale(step, _scales[i]);
                AddBackward(step.Cells);
                MultiplyBackward(step);
            }
        }
    }

    // The places in a tape are within its cells by construction; checking each of them again would take most of the time.
    private void Multiply(in TapeStep step)
    {
        ref var cells = ref MemoryMarshal.GetReference(_cells);
        ref var places = ref MemoryMarshal.GetArrayDataReference(_tape.Products);
        for (var i = step.First; i < step.End; i += 3)
        {
            ref var sum = ref Unsafe.Add(ref cells, Unsafe.Add(ref places, i + 2));
            var product = TLanes.Multiply(Unsafe.Add(ref cells, Unsafe.Add(ref places, i)), Unsafe.Add(ref cells, Unsafe.Add(ref places, i + 1)));
            sum = TLanes.Add(sum, product);
        }
    }

    private void Add(CellRange range)
    {
        ref var cells = ref MemoryMarshal.GetReference(_cells);
        var sums = _tape.Sums.AsSpan(range.FirstSum, range.EndSums - range.FirstSum);
        for (var i = 0; i + 2 < sums.Length; i += 3)
        {
            Unsafe.Add(ref cells, sums[i]) = TLanes.Add(Unsafe.Add(ref cells, sums[i + 1]), Unsafe.Add(ref cells, sums[i + 2]));
        }
    }

    private void MultiplyBackward(in TapeStep step)
    {
        if (step.IsLeftActive)
        {
            MultiplyBackward(step, 0, 1);
        }

        if (step.IsRightActive)
        {
            MultiplyBackward(step, 1, 0);
        }
    }

    private void MultiplyBackward(in TapeStep step, int factor, int other)
    {
        ref var cells = ref MemoryMarshal.GetReference(_cells);
        ref var derivatives = ref MemoryMarshal.GetReference(_derivatives);
        ref var places = ref MemoryMarshal.GetArrayDataReference(_tape.Products);
        for (var i = step.First; i < step.End; i += 3)
        {
            ref var sum = ref Unsafe.Add(ref derivatives, Unsafe.Add(ref places, i + factor));
            var derivative = Unsafe.Add(ref derivatives, Unsafe.Add(ref places, i + 2));
            sum = TLanes.Add(sum, TLanes.Multiply(derivative, Unsafe.Add(ref cells, Unsafe.Add(ref places, i + other))));
        }
    }

    private void AddBackward(CellRange range)
    {
        ref var derivatives = ref MemoryMarshal.GetReference(_derivatives);
        var sums = _tape.Sums.AsSpan(range.FirstSum, range.EndSums - range.FirstSum);
        for (var i = sums.Length - 3; i >= 0; i -= 3)
        {
            var sum = Unsafe.Add(ref derivatives, sums[i]);
            ref var first = ref Unsafe.Add(ref derivatives, sums[i + 1]);
            ref var second = ref Unsafe.Add(ref derivatives, sums[i + 2]);
            first = TLanes.Add(first, sum);
            second = TLanes.Add(second, sum);
        }
    }

    private void Rescale(int index, Span<double> exponents)
    {
        var cells = _cells.Slice(_tape.Steps[index].Cells.Offset, _tape.Steps[index].Cells.Count);
        var largest = default(T);
        foreach (ref readonly var cell in cells)
        {
            largest = TLanes.Max(largest, cell);
        }

        var scales = MemoryMarshal.Cast<T, double>(_scales.Slice(index, 1));
        var isUsual = true;
        for (var lane = 0; lane < scales.Length; lane++)
        {
            var number = MemoryMarshal.Cast<T, double>(MemoryMarshal.CreateSpan(ref largest, 1))[lane];
            if (number is > 0 and (< Small or > Large))
            {
                // Kept within the range of a double for numbers near its ends.
                var exponent = Math.Clamp(-Math.ILogB(number), -1000, 1000);
                scales[lane] = Math.ScaleB(1, exponent);
                exponents[lane] += exponent;
                isUsual = false;
            }
        }

        for (var i = 0; i < cells.Length && !isUsual; i++)
        {
            cells[i] = TLanes.Multiply(cells[i], _scales[index]);
        }
    }

    private void Unscale(in TapeStep step, T scale)
    {
        if (!step.IsMessage || EqualityComparer<T>.Default.Equals(scale, TLanes.Broadcast(1)))
        {
            return;
        }

        foreach (ref var derivative in _derivatives.Slice(step.Cells.Offset, step.Cells.Count))
        {
            derivative = TLanes.Multiply(derivative, scale);
        }
    }
}
