namespace DiagRules.Reasoning.Inference.Tapes;

/// <summary>How probable the joint outcomes of some nodes are, one row each, with every root at its second grade and, in the last column, overall.</summary>
internal sealed class ForecastTable
{
    /// <summary>If leaving a node's observation out makes the evidence this much likelier, its grades have to be tried out one by one.</summary>
    private const double MostLikelier = 1000;

    private readonly int[] _nodes;
    private readonly int[] _grades;
    private readonly ForecastForm[] _forms;
    private readonly int _columns;
    private readonly double[] _cells;

    private ForecastTable(int[] nodes, int[] grades, ForecastForm[] forms, int columns)
    {
        _nodes = nodes;
        _grades = grades;
        _forms = forms;
        _columns = columns;
        Outcomes = grades.Aggregate(1, (product, count) => product * count);
        _cells = new double[Outcomes * columns];
    }

    public int Outcomes { get; }

    /// <summary>False if the differences may have lost digits, so that the numbers must not be used.</summary>
    public bool IsReliable { get; private set; } = true;

    /// <summary>The nodes' outcomes, the last node's grade changing fastest.</summary>
    public static ForecastTable For(TapeForecast forecast, Network network, ReadOnlySpan<int> nodes)
    {
        var forms = new ForecastForm[nodes.Length];
        for (var k = 0; k < forms.Length; k++)
        {
            forms[k] = forecast.FormOf(nodes[k]);
        }

        int[] named = nodes.ToArray();
        return new ForecastTable(named, Array.ConvertAll(named, network.GradesOf), forms, forecast.Present.Length);
    }

    public ReadOnlySpan<double> Row(int outcome) => _cells.AsSpan(outcome * _columns, _columns);

    /// <summary>Fills tables, four rows at a time whatever table they belong to.</summary>
    public static void Fill(TapeForecast forecast, ReadOnlySpan<ForecastTable> tables)
    {
        Span<(int Table, int Outcome)> waiting = stackalloc (int, int)[TapeForecast.Lanes];
        var count = 0;
        for (var t = 0; t < tables.Length; t++)
        {
            for (var outcome = 0; outcome < tables[t].Outcomes; outcome++)
            {
                if (tables[t].IsKnown(outcome))
                {
                    forecast.Present.CopyTo(tables[t].MutableRow(outcome));
                    continue;
                }

                waiting[count++] = (t, outcome);
                if (count == waiting.Length)
                {
                    Run(forecast, tables, waiting);
                    count = 0;
                }
            }
        }

        Run(forecast, tables, waiting[..count]);
    }

    /// <summary>Turns "at most" into grades, once the table is filled.</summary>
    /// <param name="forecast">What filled it.</param>
    /// <param name="evidence">What is known.</param>
    public void ToGrades(TapeForecast forecast, Evidence evidence)
    {
        if (Array.TrueForAll(_forms, form => form == ForecastForm.Exact))
        {
            return;
        }

        var whole = WholeOf(forecast.Present);
        var step = _columns;
        for (var k = _nodes.Length - 1; k >= 0; k--)
        {
            if (_forms[k] != ForecastForm.Exact)
            {
                Subtract(step, _grades[k]);
            }

            step *= _grades[k];
        }

        RoundOff(whole);
        step = _columns;
        for (var k = _nodes.Length - 1; k >= 0; k--)
        {
            if (_forms[k] == ForecastForm.AtMostUnseen)
            {
                Weigh(step, evidence.LikelihoodsOf(_nodes[k]));
            }

            step *= _grades[k];
        }
    }

    private static void Run(TapeForecast forecast, ReadOnlySpan<ForecastTable> tables, ReadOnlySpan<(int Table, int Outcome)> waiting)
    {
        if (waiting.IsEmpty)
        {
            return;
        }

        forecast.Clear();
        for (var lane = 0; lane < waiting.Length; lane++)
        {
            tables[waiting[lane].Table].Enter(forecast, lane, waiting[lane].Outcome);
        }

        forecast.Run();
        for (var lane = 0; lane < waiting.Length; lane++)
        {
            forecast.Read(lane, tables[waiting[lane].Table].MutableRow(waiting[lane].Outcome));
        }
    }

    private Span<double> MutableRow(int outcome) => _cells.AsSpan(outcome * _columns, _columns);

    private void Enter(TapeForecast forecast, int lane, int outcome)
    {
        for (var k = _nodes.Length - 1; k >= 0; k--)
        {
            forecast.Enter(lane, _nodes[k], outcome % _grades[k]);
            outcome /= _grades[k];
        }
    }

    /// <summary>"At most the last grade" of every node is certain.</summary>
    private bool IsKnown(int outcome)
    {
        if (outcome < Outcomes - 1)
        {
            return false;
        }

        return Array.TrueForAll(_forms, form => form == ForecastForm.AtMost);
    }

    /// <summary>What each column adds up to before it is weighed, which is what rounding is measured by.</summary>
    private double[] WholeOf(double[] present)
    {
        var whole = new double[_columns];
        for (var outcome = 0; outcome < Outcomes; outcome++)
        {
            for (var column = 0; column < _columns; column++)
            {
                whole[column] = Math.Max(whole[column], Row(outcome)[column]);
            }
        }

        for (var column = 0; column < _columns; column++)
        {
            IsReliable &= !(whole[column] > MostLikelier * present[column]) || present[column] == 0;
        }

        return whole;
    }

    private void Subtract(int step, int grades)
    {
        for (var cell = _cells.Length - 1; cell >= 0; cell--)
        {
            if (cell / step % grades > 0)
            {
                _cells[cell] -= _cells[cell - step];
            }
        }
    }

    private void RoundOff(double[] whole)
    {
        for (var cell = 0; cell < _cells.Length; cell++)
        {
            _cells[cell] = _cells[cell] < TapeForecast.Rounding * whole[cell % _columns] ? 0 : _cells[cell];
        }
    }

    private void Weigh(int step, ReadOnlySpan<double> likelihoods)
    {
        for (var cell = 0; cell < _cells.Length; cell++)
        {
            _cells[cell] *= likelihoods[cell / step % likelihoods.Length];
        }
    }
}
