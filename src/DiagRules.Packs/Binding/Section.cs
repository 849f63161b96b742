using System.Collections.Frozen;
using System.Collections.Immutable;

namespace DiagRules.Packs.Binding;

/// <summary>Names of the sections, and what messages call an entry of each.</summary>
internal static class Section
{
    public const string Readings = "readings", Findings = "findings", Effects = "effects", Causes = "causes", Preconditions = "preconditions",
        Parameters = "parameters", Complaints = "complaints", Rules = "rules", Checks = "checks", Access = "access", Hazards = "hazards",
        Repairs = "repairs";

    private static readonly FrozenDictionary<string, string> Nouns = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [Readings] = "reading",
        [Findings] = "finding",
        [Effects] = "effect",
        [Causes] = "cause",
        [Preconditions] = "precondition",
        [Parameters] = "parameter",
        [Complaints] = "complaint",
        [Rules] = "rule",
        [Checks] = "check",
        [Access] = "access state",
        [Hazards] = "hazard",
        [Repairs] = "repair",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    public static ImmutableArray<string> All { get; } =
        [Readings, Findings, Effects, Causes, Preconditions, Parameters, Complaints, Rules, Checks, Access, Hazards, Repairs];

    public static string Noun(string section) => Nouns[section];

    /// <summary>Whether entries of the section have grades.</summary>
    public static bool IsGraded(string section) => section is Findings or Effects or Causes or Preconditions;
}
