using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Keys;

/// <summary>Reports keys that must be there; run when layers and copies are put together, since each may bring a part.</summary>
internal sealed class RequiredKeys(ProblemSink problems)
{
    /// <summary>Checks a map and those inside it.</summary>
    /// <param name="subject">The id or name messages give it.</param>
    /// <param name="place">Where its absence is reported.</param>
    /// <param name="map">The map.</param>
    /// <param name="shape">Its keys.</param>
    public void Check(string subject, SourcePlace place, MapNode map, Shape shape)
    {
        foreach (var spec in shape.Keys)
        {
            var pair = map.Find(spec.Name);
            if (pair is null)
            {
                if (spec.IsRequired)
                {
                    Report(subject, place, shape, spec);
                }
            }
            else
            {
                CheckInside(spec.Name, pair.Value, spec.Form);
            }
        }
    }

    /// <summary>Reports one key as missing.</summary>
    public void Report(string subject, SourcePlace place, Shape shape, KeySpec spec) =>
        problems.Add(
            ProblemCatalogue.RequiredKeyMissing, place, $"'{subject}' has no '{spec.Name}', which {shape.Name} must have; write for example '{spec.Example}'.");

    private void CheckInside(string name, Node node, Form form)
    {
        switch (form, node)
        {
            case (ShapeForm shape, MapNode map):
                Check(name, map.Place, map, shape.Shape);
                break;
            case (ListForm list, ListNode items):
                foreach (var item in items.Items)
                {
                    CheckInside(name, item, list.Item);
                }

                break;
            case (EitherForm either, MapNode):
                foreach (var option in either.Forms.OfType<ShapeForm>())
                {
                    CheckInside(name, node, option);
                }

                break;
        }
    }
}
