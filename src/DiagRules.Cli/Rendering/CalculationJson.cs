using System.Text.Json;
using DiagRules.Model.Calculations;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Calculations;

namespace DiagRules.Cli.Rendering;

/// <summary>Calculations for programs.</summary>
internal static class CalculationJson
{
    /// <summary>A result with all it rests on; numbers in full, each in a workshop unit and in SI.</summary>
    public static string Write(CalculationCall call, CalculationResult result) => JsonText.Write(json =>
    {
        var description = call.Calculation.Description;
        WriteDescription(json, call.Library, description);
        json.WriteStartArray("arguments");
        foreach (var argument in call.Arguments)
        {
            json.WriteStartObject();
            json.WriteString("name", argument.Parameter.Name);
            WriteQuantity(json, argument.Value);
            json.WriteBoolean("left-out", argument.IsLeftOut);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (result.IsComputed)
        {
            json.WriteStartObject("result");
            WriteQuantity(json, Quantity.FromSi(result.Value, description.Result));
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("result");
            json.WriteString("reason", result.Reason);
            json.WriteBoolean("failed", result.IsFailure);
        }
    });

    /// <summary>A list: <c>{ "calculations": [ ... ] }</c>.</summary>
    public static string Write(IEnumerable<ListedCalculation> listed) => JsonText.Write(json =>
    {
        json.WriteStartArray("calculations");
        foreach (var (library, description) in listed)
        {
            json.WriteStartObject();
            WriteDescription(json, library, description);
            json.WriteStartArray("parameters");
            foreach (var parameter in description.Parameters)
            {
                WriteParameter(json, parameter);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });

    private static void WriteDescription(Utf8JsonWriter json, CalculationLibrary library, CalculationDescription description)
    {
        json.WriteString("calculation", description.Name);
        json.WriteString("library", library.Name);
        json.WriteString("version", library.Version.ToString());
        json.WriteString("title", description.Title);
        json.WriteString("gives", description.Result.Symbol);
        json.WriteString("formula", description.Formula);
        json.WriteString("source", description.Source);
        json.WriteString("range", description.ValidRange);
    }

    private static void WriteParameter(Utf8JsonWriter json, CalculationParameter parameter)
    {
        json.WriteStartObject();
        json.WriteString("name", parameter.Name);
        json.WriteString("unit", parameter.Unit.Symbol);
        json.WriteString("meaning", parameter.Meaning);
        if (parameter.Default is { } si)
        {
            json.WriteNumber("default", parameter.Unit.FromSi(si));
        }

        json.WriteEndObject();
    }

    private static void WriteQuantity(Utf8JsonWriter json, Quantity quantity)
    {
        WriteNumber(json, "value", quantity.Value);
        json.WriteString("unit", quantity.Unit.Symbol);
        WriteNumber(json, "si", quantity.Si);
        json.WriteString("si-unit", CoherentUnit.Of(quantity.Unit).Symbol);
    }

    // What is finite in one unit may be too large for another, and JSON knows no infinity.
    private static void WriteNumber(Utf8JsonWriter json, string name, double value)
    {
        if (double.IsFinite(value))
        {
            json.WriteNumber(name, value);
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
