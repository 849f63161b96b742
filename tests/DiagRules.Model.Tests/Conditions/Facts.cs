using DiagRules.Model.Conditions;

namespace DiagRules.Model.Tests.Conditions;

/// <summary>What is known about a machine, in plain tables. What is not in them is unknown.</summary>
internal sealed class Facts : IFacts
{
    public Dictionary<int, double> Values { get; init; } = [];

    public Dictionary<int, double> Uncertainties { get; init; } = [];

    public Dictionary<int, GradeSet> Open { get; init; } = [];

    public Dictionary<int, double> Parameters { get; init; } = [];

    /// <summary>Nothing is known.</summary>
    public static Facts None { get; } = new();

    public double Reading(int reading) => Values.GetValueOrDefault(reading, double.NaN);

    public double Uncertainty(int reading) => Uncertainties.GetValueOrDefault(reading);

    public GradeSet Grades(int node) => Open.GetValueOrDefault(node);

    public double Parameter(int parameter) => Parameters.GetValueOrDefault(parameter, double.NaN);
}
