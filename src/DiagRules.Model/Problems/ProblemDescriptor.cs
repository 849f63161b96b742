namespace DiagRules.Model.Problems;

/// <summary>One entry of the catalogue of problems: what all problems of one code share.</summary>
/// <param name="Code">The code, <c>DR</c> and four digits. Never reused.</param>
/// <param name="Severity">Severity unless the host raises it.</param>
/// <param name="Title">A few plain words.</param>
public sealed record ProblemDescriptor(string Code, Severity Severity, string Title);
