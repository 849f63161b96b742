using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Layers;

/// <summary>One pack asks for another as its base.</summary>
/// <param name="By">Id of the pack that asks.</param>
/// <param name="Wanted">What it asks for, with the place.</param>
internal sealed record BaseRequest(string By, VersionedId Wanted)
{
    /// <summary>What a pack asks for in <c>extends</c>; what is not readable there is reported.</summary>
    public static IReadOnlyList<BaseRequest> Of(PackTrees pack) =>
    [
        .. (pack.Head?.Find("extends")?.Value as ListNode)?.Items.OfType<ScalarNode>()
            .Select(text => VersionReader.ReadVersionedId(text.Text, pack.Problems))
            .OfType<VersionedId>()
            .Select(wanted => new BaseRequest(pack.Id, wanted)) ?? [],
    ];
}
