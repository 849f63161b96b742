using DiagRules.Model.Conditions;

namespace DiagRules.Facts;

/// <summary>The same facts with every meter taken as perfect; tells "too close to call" from "not known".</summary>
internal sealed class SharpFacts(IFacts facts) : IFacts
{
    public double Reading(int reading) => facts.Reading(reading);

    public double Uncertainty(int reading) => 0;

    public GradeSet Grades(int node) => facts.Grades(node);

    public double Parameter(int parameter) => facts.Parameter(parameter);
}
