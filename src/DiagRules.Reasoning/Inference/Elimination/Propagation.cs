namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>Passes messages through the buckets of a plan: forward for the probability of the evidence, backward for all posteriors.</summary>
/// <remarks>Every number is a sum of products of probabilities, so relative errors stay near the rounding of a double whatever the evidence.</remarks>
internal static class Propagation
{
    /// <summary>A message whose largest number is outside these bounds is scaled by a power of two, which rounds nothing.</summary>
    private const double Small = 1.0 / (1L << 32);
    private const double Large = 1L << 32;

    /// <summary>Eliminates every variable.</summary>
    /// <returns>Natural logarithm of the sum (or maximum) over all variables of the product of all tables; negative infinity if it is 0.</returns>
    public static double Forward(Plan plan, Workspace work)
    {
        var total = new LogProduct();
        var exponent = 0;
        foreach (var bucket in plan.Buckets)
        {
            Combine(bucket, plan, work);
            var largest = bucket.IsMaximised ? MaximiseOut(bucket, work) : SumOut(bucket, work);
            if (largest == 0)
            {
                return double.NegativeInfinity;
            }

            if (bucket.Parent < 0)
            {
                total.Multiply(largest);
            }
            else if (largest is < Small or > Large)
            {
                exponent += Rescale(bucket, work, largest);
            }
        }

        return total.Log + (exponent * Math.Log(2));
    }

    /// <summary>After <see cref="Forward"/>: turns every bucket's table into the joint posterior of its variables.</summary>
    public static void Backward(Plan plan, Workspace work)
    {
        for (var i = plan.Buckets.Length - 1; i >= 0; i--)
        {
            var bucket = plan.Buckets[i];
            var cells = work.Cells.AsSpan(bucket.CellOffset, bucket.CellCount);
            var messages = work.Messages.AsSpan(bucket.RowOffset, bucket.RowCount);
            var separator = work.Separators.AsSpan(bucket.RowOffset, bucket.RowCount);
            if (bucket.Parent < 0)
            {
                separator[0] = 1;
            }
            else
            {
                var parent = plan.Buckets[bucket.Parent];
                SumOnto(separator, work.Cells.AsSpan(parent.CellOffset, parent.CellCount), parent.Width, plan.Links[i]);
            }

            ScaleRows(cells, bucket.Width, separator, messages);
        }
    }

    /// <summary>Posterior of a variable from a calibrated table of its bucket.</summary>
    public static void Marginal(ReadOnlySpan<double> cells, Span<double> posterior)
    {
        posterior.Clear();
        for (var cell = 0; cell < cells.Length;)
        {
            for (var x = 0; x < posterior.Length; x++)
            {
                posterior[x] += cells[cell++];
            }
        }
    }

    /// <summary>Sums a parent's table onto the rows of a child.</summary>
    private static void SumOnto(Span<double> separator, ReadOnlySpan<double> cells, int width, BucketInput link)
    {
        separator.Clear();
        for (int row = 0, cell = 0; cell < cells.Length; row++)
        {
            var target = link.Rows is { } rows ? rows[row] : 0;
            for (var x = 0; x < width; x++, target += link.Stride)
            {
                separator[target] += cells[cell++];
            }
        }
    }

    /// <summary>Multiplies each row by numerator / denominator. Where the denominator is 0 the row is 0 already, and stays so.</summary>
    private static void ScaleRows(Span<double> cells, int width, ReadOnlySpan<double> numerator, ReadOnlySpan<double> denominator)
    {
        for (int row = 0, cell = 0; row < numerator.Length; row++)
        {
            var ratio = denominator[row] > 0 ? numerator[row] / denominator[row] : 0;
            for (var x = 0; x < width; x++)
            {
                cells[cell++] *= ratio;
            }
        }
    }

    private static void Combine(Bucket bucket, Plan plan, Workspace work)
    {
        var cells = work.Cells.AsSpan(bucket.CellOffset, bucket.CellCount);
        var local = work.Locals.AsSpan(plan.LocalOffsets[bucket.Variable], bucket.Width);
        for (var cell = 0; cell < cells.Length; cell += local.Length)
        {
            local.CopyTo(cells[cell..]);
        }

        foreach (var input in bucket.Inputs)
        {
            var source = input.IsMessage
                ? work.Messages.AsSpan(plan.Buckets[input.Source].RowOffset, plan.Buckets[input.Source].RowCount)
                : work.Tables[input.Source].AsSpan(work.Bases[input.Source]);
            Multiply(cells, bucket.Width, source, input);
        }
    }

    private static void Multiply(Span<double> cells, int width, ReadOnlySpan<double> source, BucketInput input)
    {
        for (int row = 0, cell = 0; cell < cells.Length; row++)
        {
            var from = input.Rows is { } rows ? rows[row] : 0;
            for (var x = 0; x < width; x++, from += input.Stride)
            {
                cells[cell++] *= source[from];
            }
        }
    }

    private static double SumOut(Bucket bucket, Workspace work)
    {
        var cells = work.Cells.AsSpan(bucket.CellOffset, bucket.CellCount);
        var message = work.Messages.AsSpan(bucket.RowOffset, bucket.RowCount);
        var largest = 0.0;
        for (int row = 0, cell = 0; row < message.Length; row++)
        {
            var sum = 0.0;
            for (var x = 0; x < bucket.Width; x++)
            {
                sum += cells[cell++];
            }

            message[row] = sum;
            largest = Math.Max(largest, sum);
        }

        return largest;
    }

    private static double MaximiseOut(Bucket bucket, Workspace work)
    {
        var cells = work.Cells.AsSpan(bucket.CellOffset, bucket.CellCount);
        var message = work.Messages.AsSpan(bucket.RowOffset, bucket.RowCount);
        var largest = 0.0;
        for (int row = 0, cell = 0; row < message.Length; row++)
        {
            var best = 0.0;
            for (var x = 0; x < bucket.Width; x++)
            {
                best = Math.Max(best, cells[cell++]);
            }

            message[row] = best;
            largest = Math.Max(largest, best);
        }

        return largest;
    }

    /// <summary>Brings a message near 1, and the table with it since both are divided later.</summary>
    /// <returns>The power of two that was taken out.</returns>
    private static int Rescale(Bucket bucket, Workspace work, double largest)
    {
        var exponent = Math.ILogB(largest);
        foreach (ref var number in work.Messages.AsSpan(bucket.RowOffset, bucket.RowCount))
        {
            number = Math.ScaleB(number, -exponent);
        }

        foreach (ref var number in work.Cells.AsSpan(bucket.CellOffset, bucket.CellCount))
        {
            number = Math.ScaleB(number, -exponent);
        }

        return exponent;
    }
}
