using DiagRules.Reasoning.Inference.Tapes;

namespace DiagRules.Reasoning.Inference;

public sealed partial class InferenceEngine
{
    /// <summary>Joint outcomes of nodes, in the order of their grades, with each of several roots at its second grade and, last, whatever the roots are.</summary>
    /// <returns>Joint probabilities given the evidence; null if it is impossible, or if a tape is not the way to get them.</returns>
    internal ForecastTable? Forecast(Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> roots, ReadOnlySpan<int> nodes)
    {
        var memory = RentMemory();
        try
        {
            if (ForecastTape(memory, evidence, priors, nodes) is not { } tape)
            {
                return null;
            }

            var forecast = new TapeForecast(Network, tape, memory, evidence, priors, roots);
            if (!forecast.IsPossible)
            {
                return null;
            }

            var table = ForecastTable.For(forecast, Network, nodes);
            ForecastTable.Fill(forecast, [table]);
            table.ToGrades(forecast, evidence);
            return table.IsReliable ? table : null;
        }
        finally
        {
            Return(memory);
        }
    }

    /// <summary>The same as <see cref="Predict(Evidence, ReadOnlySpan{double}, ReadOnlySpan{int}, ReadOnlySpan{int}, ReadOnlySpan{double[]})"/>, with a tape.</summary>
    /// <returns>False if a tape is not the way to get it.</returns>
    private bool Forecast(
        Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> roots, ReadOnlySpan<int> targets, ReadOnlySpan<double[]> rows)
    {
        var memory = RentMemory();
        try
        {
            if (ForecastTape(memory, evidence, priors, targets) is not { } tape)
            {
                return false;
            }

            var forecast = new TapeForecast(Network, tape, memory, evidence, priors, roots);
            if (forecast.IsPossible)
            {
                Forecast(forecast, evidence, priors, roots, targets, rows);
            }

            return true;
        }
        finally
        {
            Return(memory);
        }
    }

    private void Forecast(
        TapeForecast forecast,
        Evidence evidence,
        ReadOnlySpan<double> priors,
        ReadOnlySpan<int> roots,
        ReadOnlySpan<int> targets,
        ReadOnlySpan<double[]> rows)
    {
        var tables = new ForecastTable[targets.Length];
        for (var t = 0; t < tables.Length; t++)
        {
            tables[t] = ForecastTable.For(forecast, Network, targets.Slice(t, 1));
        }

        ForecastTable.Fill(forecast, tables);
        for (var t = 0; t < tables.Length; t++)
        {
            tables[t].ToGrades(forecast, evidence);
            if (!tables[t].IsReliable)
            {
                // By itself the target is given a variable, and nothing is subtracted.
                Predict(evidence, priors, roots, targets.Slice(t, 1), rows.Slice(t, 1));
                continue;
            }

            for (var grade = 0; grade < tables[t].Outcomes; grade++)
            {
                SetColumn(rows[t].AsSpan(grade), tables[t].Outcomes, tables[t].Row(grade), forecast.Present);
            }
        }
    }

    /// <summary>
    /// A tape on which these nodes can be tried out. One with all inner nodes as variables serves every question after the same evidence; where it is dear,
    /// only what these nodes need is a variable.
    /// </summary>
    private Tape? ForecastTape(TapeMemory memory, Evidence evidence, ReadOnlySpan<double> priors, ReadOnlySpan<int> targets)
    {
        if (targets.Length == 1)
        {
            return BestTape(memory, evidence, priors, targets);
        }

        var shared = BestTape(memory, evidence, priors, InnerNodesAnd(targets));
        return shared?.Estimate.TableCells <= QuickTape ? shared : BestTape(memory, evidence, priors, AnchorsOf(evidence, targets));
    }

    private int[] InnerNodesAnd(ReadOnlySpan<int> targets)
    {
        var nodes = new List<int>();
        foreach (var target in targets)
        {
            if (Network.KindOf(target) != NodeKind.Graded)
            {
                nodes.Add(target);
            }
        }

        return [.. nodes, .. Enumerable.Range(0, Network.Count).Where(node => Network.HasChildren[node])];
    }
}
