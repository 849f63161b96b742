namespace DiagRules.Reasoning.Inference.Elimination;

/// <summary>Reads the most probable grades off the tables of a forward pass.</summary>
internal static class Maximisation
{
    /// <summary>Goes back from the variable eliminated last, each time taking the grade that was the largest given those already chosen.</summary>
    /// <returns>The grade of each variable that the plan maximises over; 0 for the others.</returns>
    public static int[] TraceBack(Plan plan, Workspace work)
    {
        var choice = new int[plan.BucketOf.Length];
        for (var i = plan.Buckets.Length - 1; i >= 0 && plan.Buckets[i].IsMaximised; i--)
        {
            var bucket = plan.Buckets[i];
            var row = 0;
            foreach (var neighbour in bucket.Neighbours)
            {
                row += choice[neighbour.Id] * neighbour.Stride;
            }

            choice[bucket.Variable] = LargestOf(work.Cells.AsSpan(bucket.CellOffset + (row * bucket.Width), bucket.Width));
        }

        return choice;
    }

    private static int LargestOf(ReadOnlySpan<double> row)
    {
        var largest = 0;
        for (var x = 1; x < row.Length; x++)
        {
            if (row[x] > row[largest])
            {
                largest = x;
            }
        }

        return largest;
    }
}
