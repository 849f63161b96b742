using System.Collections.Frozen;

namespace DiagRules.Packs.Sets;

/// <summary>For which members of which sets a template is being copied.</summary>
/// <param name="Members">The member by set.</param>
/// <param name="Count">How many copies the template makes in all; its share is divided by this.</param>
/// <param name="Name">The members as problems name them: <c>left</c>.</param>
internal sealed record Copy(FrozenDictionary<string, string> Members, int Count, string Name);
