using System.Collections.Immutable;
using DiagRules.Model;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Binding;

/// <summary>Makes parameters.</summary>
internal sealed class ParameterBinder(Draft draft) : IEntryBinder
{
    public Entry? Bind(Declared declared, Fields fields) => fields.Quantity("value") is not { } value ? null : new Parameter
    {
        Id = declared.Id,
        Index = declared.Index,
        Title = fields.Sentence("title") ?? declared.Id,
        Value = value,
        ByChassis = ByChassis(fields, value.Unit),
        Note = fields.Sentence("note"),
    };

    private ImmutableDictionary<string, Quantity> ByChassis(Fields fields, Unit unit)
    {
        var values = ImmutableDictionary.CreateBuilder<string, Quantity>(StringComparer.Ordinal);
        foreach (var (key, value) in fields.Map("for")?.Pairs ?? [])
        {
            if (EntryBase.IsDeclared(draft, key) && value is ScalarNode text && QuantityReader.Read(text.Text, unit, draft.Problems) is { } quantity)
            {
                values[key.Value] = quantity;
            }
        }

        return values.ToImmutable();
    }
}
