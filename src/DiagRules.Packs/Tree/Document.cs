namespace DiagRules.Packs.Tree;

/// <summary>One document of a file.</summary>
/// <param name="Root">Its tree.</param>
/// <param name="IsDamaged">Whether something in it was refused while it was read.</param>
internal sealed record Document(Node Root, bool IsDamaged);
