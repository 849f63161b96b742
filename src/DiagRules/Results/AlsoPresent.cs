namespace DiagRules.Results;

/// <summary>A cause likely to be there beside the leading one. Immutable.</summary>
/// <param name="Cause">Id.</param>
/// <param name="Title">Title.</param>
/// <param name="Probability">Probability 0..1, given that the leading cause is what brought the machine in.</param>
public sealed record AlsoPresent(string Cause, string Title, double Probability);
