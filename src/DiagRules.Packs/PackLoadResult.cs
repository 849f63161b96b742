using DiagRules.Model;
using DiagRules.Model.Problems;

namespace DiagRules.Packs;

/// <summary>What came of loading a pack. Immutable.</summary>
/// <param name="Pack">The pack, or <see langword="null"/> when an error refused it.</param>
/// <param name="Problems">All problems, in order of file, line and column.</param>
public sealed record PackLoadResult(Pack? Pack, IReadOnlyList<Problem> Problems)
{
    /// <summary>The pack, or an exception that carries the problems.</summary>
    /// <exception cref="PackException">The pack was refused.</exception>
    public Pack Require() => Pack ?? throw new PackException(Problems);
}
