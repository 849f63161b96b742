using System.Collections.Frozen;

namespace DiagRules.Packs.Conditions;

/// <summary>The words of the condition language.</summary>
internal static class Keywords
{
    public const string And = "and";
    public const string Or = "or";
    public const string Not = "not";
    public const string Is = "is";
    public const string Known = "known";
    public const string Unknown = "unknown";
    public const string Any = "any";
    public const string Every = "every";
    public const string Worse = "worse";
    public const string Better = "better";

    /// <summary>All of them, in the order of the documentation.</summary>
    public static readonly IReadOnlyList<string> All = [And, Or, Not, Is, Known, Unknown, Any, Every, Worse, Better];

    private static readonly FrozenSet<string> Set = All.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether a word belongs to the language and is no id.</summary>
    public static bool Contains(string word) => Set.Contains(word);
}
