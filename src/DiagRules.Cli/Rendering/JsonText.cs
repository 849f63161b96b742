using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace DiagRules.Cli.Rendering;

/// <summary>One JSON document, indented.</summary>
internal static class JsonText
{
    // Texts come from packs in any language; escaping their letters would help nobody, since this is never put into HTML.
    private static readonly JsonWriterOptions Indented = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The text of a document whose outermost object has the members that <paramref name="members"/> writes.</summary>
    public static string Write(Action<Utf8JsonWriter> members)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Indented))
        {
            json.WriteStartObject();
            members(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
