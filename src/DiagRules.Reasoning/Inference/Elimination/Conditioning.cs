namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>Adds one condition, "this variable has this grade", to a plan whose tables hold joint posteriors, without starting over.</summary>
/// <remarks>
/// The condition enters at the variable's bucket and spreads outwards along the tree: each bucket is multiplied by what changed on the side it shares with the
/// one before. It stops where nothing changes any more, so a cause far from a finding costs next to nothing.
/// </remarks>
internal static class Conditioning
{
    /// <summary>A relative change below this is rounding. A hundred times coarser than a double, a thousand times finer than what answers promise.</summary>
    private const double Unchanged = 1e-13;

    /// <summary>Conditions on a grade whose posterior is above 0. The plain tables stay as they are.</summary>
    public static void Apply(Plan plan, Workspace work, int variable, int grade, double posterior)
    {
        work.FitConditioning(plan);
        work.IsConditioned.AsSpan(0, plan.Buckets.Length).Clear();
        var start = plan.BucketOf[variable];
        Restrict(plan.Buckets[start], work, grade, posterior);
        work.IsConditioned[start] = true;
        work.Open.Clear();
        work.Open.Push((start, -1));
        while (work.Open.TryPop(out var next))
        {
            Spread(plan, work, next.Bucket, next.From);
        }
    }

    /// <summary>Posterior of a variable under the condition.</summary>
    public static void Marginal(Plan plan, Workspace work, int variable, Span<double> posterior)
    {
        var index = plan.BucketOf[variable];
        var bucket = plan.Buckets[index];
        var tables = work.IsConditioned[index] ? work.Conditioned : work.Cells;
        Propagation.Marginal(bucket, tables.AsSpan(bucket.CellOffset, bucket.CellCount), posterior);
    }

    private static void Restrict(Bucket bucket, Workspace work, int grade, double posterior)
    {
        var conditioned = work.Conditioned.AsSpan(bucket.CellOffset, bucket.CellCount);
        conditioned.Clear();
        for (var cell = grade; cell < conditioned.Length; cell += bucket.Width)
        {
            conditioned[cell] = work.Cells[bucket.CellOffset + cell] / posterior;
        }
    }

    private static void Spread(Plan plan, Workspace work, int index, int from)
    {
        var bucket = plan.Buckets[index];
        if (bucket.Parent >= 0 && bucket.Parent != from)
        {
            SpreadUp(plan, work, index);
        }

        foreach (var child in bucket.Children)
        {
            if (child != from)
            {
                SpreadDown(plan, work, index, child);
            }
        }
    }

    private static void SpreadUp(Plan plan, Workspace work, int index)
    {
        var bucket = plan.Buckets[index];
        var parent = plan.Buckets[bucket.Parent];
        var ratios = work.Rows.AsSpan(0, bucket.RowCount);
        var cells = work.Conditioned.AsSpan(bucket.CellOffset, bucket.CellCount);
        for (var row = 0; row < ratios.Length; row++)
        {
            ratios[row] = 0;
            foreach (var cell in cells.Slice(row * bucket.Width, bucket.Width))
            {
                ratios[row] += cell;
            }
        }

        if (Divide(ratios, work.Separators.AsSpan(bucket.RowOffset, bucket.RowCount)))
        {
            MultiplyInto(parent, work, ratios, Propagation.LinkOf(parent, index));
            work.IsConditioned[bucket.Parent] = true;
            work.Open.Push((bucket.Parent, index));
        }
    }

    private static void SpreadDown(Plan plan, Workspace work, int index, int child)
    {
        var bucket = plan.Buckets[index];
        var below = plan.Buckets[child];
        var ratios = work.Rows.AsSpan(0, below.RowCount);
        Propagation.SumOnto(ratios, work.Conditioned.AsSpan(bucket.CellOffset, bucket.CellCount), bucket.Width, Propagation.LinkOf(bucket, child));
        if (Divide(ratios, work.Separators.AsSpan(below.RowOffset, below.RowCount)))
        {
            for (var cell = 0; cell < below.CellCount; cell++)
            {
                work.Conditioned[below.CellOffset + cell] = work.Cells[below.CellOffset + cell] * ratios[cell / below.Width];
            }

            work.IsConditioned[child] = true;
            work.Open.Push((child, index));
        }
    }

    /// <summary>Makes ratios of new sums to old ones.</summary>
    /// <returns>Whether any of them differs from 1.</returns>
    private static bool Divide(Span<double> sums, ReadOnlySpan<double> before)
    {
        var changed = false;
        for (var row = 0; row < sums.Length; row++)
        {
            sums[row] = before[row] > 0 ? sums[row] / before[row] : 1;
            changed |= Math.Abs(sums[row] - 1) > Unchanged;
        }

        return changed;
    }

    private static void MultiplyInto(Bucket parent, Workspace work, ReadOnlySpan<double> ratios, BucketInput link)
    {
        for (int row = 0, cell = parent.CellOffset; row < parent.RowCount; row++)
        {
            var from = link.Rows is { } rows ? rows[row] : 0;
            for (var x = 0; x < parent.Width; x++, cell++, from += link.Stride)
            {
                work.Conditioned[cell] = work.Cells[cell] * ratios[from];
            }
        }
    }
}
