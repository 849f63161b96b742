using DiagRules.Model.Conditions;

namespace DiagRules.Facts;

/// <summary>One way to look at what is known: arrays by index of reading, node and parameter. Belongs to one session.</summary>
internal sealed class FactsView : IFacts
{
    private readonly double[] _parameters;

    public FactsView(int readings, int nodes, double[] parameters)
    {
        _parameters = parameters;
        Readings = new double[readings];
        Uncertainties = new double[readings];
        Known = new GradeSet[nodes];
        Clear();
    }

    /// <summary>Values in SI, NaN where unknown.</summary>
    public double[] Readings { get; }

    /// <summary>Standard uncertainties in SI.</summary>
    public double[] Uncertainties { get; }

    /// <summary>Grades still open by node; empty where unknown.</summary>
    public GradeSet[] Known { get; }

    public double Reading(int reading) => Readings[reading];

    public double Uncertainty(int reading) => Uncertainties[reading];

    public GradeSet Grades(int node) => Known[node];

    public double Parameter(int parameter) => _parameters[parameter];

    public void Clear()
    {
        Array.Fill(Readings, double.NaN);
        Array.Clear(Uncertainties);
        Array.Clear(Known);
    }
}
