namespace DiagRules.Steps;

/// <summary>Work that was done where the record of observations does not show all of it: a chart answers checks by grades, not by values.</summary>
/// <param name="Checks">Ids of the checks that are done, whatever they left open.</param>
/// <param name="Open">Ids of the access states that are open.</param>
internal sealed record WorkDone(IReadOnlySet<string> Checks, IReadOnlySet<string> Open);
