using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Calculations;
using DiagRules.Model.Problems;

namespace DiagRules.Packs.Conditions;

/// <summary>What the words of a condition may refer to.</summary>
internal interface ISymbols
{
    /// <summary>
    /// The entry with this id, whatever its section, or <see langword="null"/>. Readings are given with their <see cref="Reading.From"/>
    /// already read (they are read in order of dependence), findings and causes with their grades and node.
    /// </summary>
    Entry? Find(string id);

    /// <summary>
    /// Whether there is an entry with this id that was refused for a reason of its own, or that was taken away, so that nothing more is
    /// said about it here.
    /// </summary>
    bool IsRefused(string id, SourcePlace place) => false;

    /// <summary>All ids, for "did you mean".</summary>
    IEnumerable<string> Ids { get; }

    /// <summary>Members of a set (<c>left</c>, <c>right</c>) in order, or <see langword="null"/> when there is no such set.</summary>
    ImmutableArray<string>? Members(string set);

    /// <summary>Names of all sets.</summary>
    IEnumerable<string> Sets { get; }

    /// <summary>The member for which the present entry is being copied, by set; empty outside of templates.</summary>
    IReadOnlyDictionary<string, string> Copied { get; }

    /// <summary>Libraries the pack declares.</summary>
    IReadOnlyList<CalculationLibrary> Calculations { get; }

    /// <summary>Whether the pack declares a library that is not there, so that nothing is said about calls of calculations that are not either.</summary>
    bool LacksLibrary => false;
}
