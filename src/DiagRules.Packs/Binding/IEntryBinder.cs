using DiagRules.Model;

namespace DiagRules.Packs.Binding;

/// <summary>Makes the entries of one section.</summary>
internal interface IEntryBinder
{
    /// <summary>The entry, or <see langword="null"/> where too much of it was refused.</summary>
    Entry? Bind(Declared declared, Fields fields);
}
