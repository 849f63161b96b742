namespace DiagRules.Model.Conditions;

/// <summary>What is known about one machine, as conditions look at it. Indices are those of the pack's entries.</summary>
public interface IFacts
{
    /// <summary>
    /// Value of a reading in the coherent SI unit: NaN when unknown, an infinity when beyond the meter's range.
    /// Derived readings are given too.
    /// </summary>
    double Reading(int reading);

    /// <summary>Standard uncertainty of a measured reading in SI; 0 when it states no accuracy. Not asked for derived readings.</summary>
    double Uncertainty(int reading);

    /// <summary>The grades still open for a cause, effect or finding, by node; empty when unknown or contradictory.</summary>
    GradeSet Grades(int node);

    /// <summary>Value of a parameter on this chassis in the coherent SI unit.</summary>
    double Parameter(int parameter);
}
