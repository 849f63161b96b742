using DiagRules.Packs.Text;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Binding;

/// <summary>Reads ids and grades; <c>true</c> and the like were refused by the table of keys already.</summary>
internal static class IdWords
{
    public static string? Read(PlacedText text, IdKind kind, ProblemSink problems, bool isPattern = false) =>
        ReservedWords.IsYamlConstant(text.Value) ? null : IdReader.Read(text, kind, problems, isPattern);
}
