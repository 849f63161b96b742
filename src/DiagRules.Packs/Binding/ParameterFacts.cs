using DiagRules.Model;
using DiagRules.Model.Conditions;

namespace DiagRules.Packs.Binding;

/// <summary>What is known before anything is observed: the parameters of a chassis.</summary>
internal sealed class ParameterFacts(Draft draft, string? chassis) : IFacts
{
    public double Reading(int reading) => double.NaN;

    public double Uncertainty(int reading) => 0;

    public GradeSet Grades(int node) => GradeSet.None;

    public double Parameter(int parameter) => draft.Of(Section.Parameters)[parameter].Entry is Parameter known ? known.On(chassis).Si : double.NaN;
}
