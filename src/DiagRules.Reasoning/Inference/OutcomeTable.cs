using DiagRules.Reasoning.Inference.Tapes;

namespace DiagRules.Reasoning.Inference;

/// <summary>Joint outcomes of several nodes, one row each, and the probability of each under every cause, under <c>Z = 0</c>, and overall.</summary>
internal sealed class OutcomeTable(CauseModel model, int[] nodes, int outcomes)
{
    private readonly int _causes = model.Causes.Count;

    /// <summary>Columns of a row: the causes, <c>Z = 0</c>, overall.</summary>
    private int Columns => _causes + 2;

    public double[] Fill(Evidence evidence, Weights weights)
    {
        var table = new double[outcomes * Columns];
        if (model.Forecast(evidence, nodes) is { } forecast)
        {
            CopyListed(forecast, table);
        }
        else
        {
            FillListed(evidence, table);
        }

        FillUnlisted(evidence, table);
        Normalise(table, weights);
        return table;
    }

    private void CopyListed(ForecastTable forecast, double[] table)
    {
        for (var outcome = 0; outcome < outcomes; outcome++)
        {
            var row = table.AsSpan(outcome * Columns, Columns);
            forecast.Row(outcome)[.._causes].CopyTo(row);
            row[^1] = model.HasPrimary ? 0 : forecast.Row(outcome)[_causes];
        }
    }

    /// <summary>Enters each outcome as evidence: one forward and one backward pass give it for all causes.</summary>
    private void FillListed(Evidence evidence, double[] table)
    {
        var scratch = evidence.Copy();
        var grades = new int[nodes.Length];
        var total = model.LogProbabilityOfListed(evidence);
        for (var outcome = 0; outcome < outcomes; outcome++)
        {
            var row = table.AsSpan(outcome * Columns, Columns);
            if (Enter(scratch, evidence, grades))
            {
                var overall = model.JointWeights(scratch, nodes, total, row[.._causes]);
                row[^1] = model.HasPrimary ? 0 : overall;
            }

            Advance(grades);
        }
    }

    private void FillUnlisted(Evidence evidence, double[] table)
    {
        var unlisted = Array.ConvertAll(nodes, node => UnlistedPosterior(evidence, node));
        var grades = new int[nodes.Length];
        for (var row = 0; row < table.Length; row += Columns)
        {
            table[row + _causes] = model.HasPrimary ? Product(unlisted, grades) : 0;
            Advance(grades);
        }
    }

    private double[] UnlistedPosterior(Evidence evidence, int node)
    {
        var posterior = new double[model.Network.GradesOf(node)];
        if (model.HasPrimary)
        {
            model.UnlistedPosterior(evidence, node, posterior);
        }

        return posterior;
    }

    /// <returns>False if what is known excludes the outcome.</returns>
    private bool Enter(Evidence scratch, Evidence evidence, int[] grades)
    {
        for (var k = 0; k < nodes.Length; k++)
        {
            var likelihoods = new double[model.Network.GradesOf(nodes[k])];
            likelihoods[grades[k]] = evidence.IsObserved(nodes[k]) ? evidence.LikelihoodsOf(nodes[k])[grades[k]] : 1;
            if (likelihoods[grades[k]] == 0)
            {
                return false;
            }

            scratch.Observe(nodes[k], likelihoods);
        }

        return true;
    }

    private static double Product(double[][] unlisted, int[] grades)
    {
        var product = 1.0;
        for (var k = 0; k < grades.Length; k++)
        {
            product *= unlisted[k][grades[k]];
        }

        return product;
    }

    /// <summary>The next outcome; the last node's grade changes fastest.</summary>
    private void Advance(int[] grades)
    {
        for (var k = nodes.Length - 1; k >= 0 && ++grades[k] == model.Network.GradesOf(nodes[k]); k--)
        {
            grades[k] = 0;
        }
    }

    /// <summary>Makes every column a distribution; a cause out of the running gets the overall one.</summary>
    private void Normalise(double[] table, Weights weights)
    {
        for (var column = 0; column <= _causes; column++)
        {
            Scale(table, column, Sum(table, column) is > 0 and var sum ? 1 / sum : 0);
            for (var outcome = 0; outcome < outcomes && model.HasPrimary; outcome++)
            {
                table[(outcome * Columns) + _causes + 1] += table[(outcome * Columns) + column] * (weights.Numbers[column] / weights.Total);
            }
        }

        Scale(table, _causes + 1, 1 / Sum(table, _causes + 1));
        for (var column = 0; column <= _causes; column++)
        {
            if (Sum(table, column) == 0)
            {
                for (var row = 0; row < table.Length; row += Columns)
                {
                    table[row + column] = table[row + _causes + 1];
                }
            }
        }
    }

    private double Sum(double[] table, int column)
    {
        var sum = 0.0;
        for (var cell = column; cell < table.Length; cell += Columns)
        {
            sum += table[cell];
        }

        return sum;
    }

    private void Scale(double[] table, int column, double factor)
    {
        for (var cell = column; cell < table.Length; cell += Columns)
        {
            table[cell] *= factor;
        }
    }
}
