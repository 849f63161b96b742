using System.Collections.Frozen;
using DiagRules.Packs.Conditions;

namespace DiagRules.Packs.Values;

/// <summary>Words that are no ids and no grades, since they mean something already.</summary>
internal static class ReservedWords
{
    public const string CannotTell = "cannot-tell";
    public const string OverRange = "over-range";
    public const string UnderRange = "under-range";

    private static readonly FrozenDictionary<string, string> Purposes = Build();

    /// <summary>What a word is reserved for, as half a sentence; <see langword="null"/> when it is free.</summary>
    public static string? PurposeOf(string word) => Purposes.GetValueOrDefault(word);

    /// <summary>Whether other YAML tools read a word as something that is not text. Only the lower-case forms are plain ids.</summary>
    public static bool IsYamlConstant(string word) => word.ToUpperInvariant() is "TRUE" or "FALSE" or "NULL" || word == "~";

    private static FrozenDictionary<string, string> Build()
    {
        var purposes = Keywords.All.ToDictionary(word => word, _ => "the language of conditions", StringComparer.Ordinal);
        foreach (var key in (string[])["by", "trust", "while", "at", "note", "tried", "result"])
        {
            purposes.Add(key, "a key of observations");
        }

        purposes.Add("present", "the grades of causes");
        purposes.Add("absent", "the grades of causes");
        purposes.Add(CannotTell, "an observation without an answer");
        purposes.Add("unlisted", "what no listed cause explains");
        purposes.Add("remove", "taking an entry or a key of a base pack away");
        purposes.Add("pattern", "the built-in finding that says whether the fault comes and goes");
        return purposes.ToFrozenDictionary(StringComparer.Ordinal);
    }
}
