using System.Text.Json;
using DiagRules.Facts;
using DiagRules.Model.Cases;

namespace DiagRules.Saving;

/// <summary>A job between two sittings.</summary>
/// <param name="Complaint">Id of the complaint, or <see langword="null"/>.</param>
/// <param name="Observations">The record, in order.</param>
internal sealed record SavedSession(string? Complaint, IReadOnlyList<Observation> Observations)
{
    public static string Write(DiagnosisSession session)
    {
        var pack = session.Engine.Pack;
        var document = new SessionDocument
        {
            Format = SessionDocument.CurrentFormat,
            Pack = pack.Id,
            Version = pack.Version,
            Chassis = session.Engine.Chassis,
            Complaint = session.Options.Complaint,
            Observations = [.. session.Record.Select(observation => new ObservationDocument
            {
                Id = observation.Id,
                Value = ObservationText.Write(pack, observation),
                By = observation.By,
                Trust = observation.Trust,
                While = observation.WhileWorking ? "working" : null,
                At = observation.At,
                Note = observation.Note,
            })],
        };
        return JsonSerializer.Serialize(document, SessionJsonContext.Default.SessionDocument);
    }

    /// <exception cref="SessionFormatException">The document cannot be read, or is not for this engine.</exception>
    public static SavedSession Read(string json, DiagnosisEngine engine)
    {
        var document = Parse(json);
        var pack = engine.Pack;
        if (document.Pack != pack.Id || document.Version != pack.Version)
        {
            throw new SessionFormatException(
                $"The saved session belongs to pack '{document.Pack}' {document.Version}; this is '{pack.Id}' {pack.Version}. Go on with that version, or start anew.");
        }

        if (document.Chassis != engine.Chassis)
        {
            throw new SessionFormatException($"The saved session is for chassis '{document.Chassis}'; this engine is for '{engine.Chassis}'.");
        }

        return new SavedSession(document.Complaint, [.. document.Observations.Select(saved => Read(saved, engine))]);
    }

    private static SessionDocument Parse(string json)
    {
        SessionDocument? document;
        try
        {
            document = JsonSerializer.Deserialize(json, SessionJsonContext.Default.SessionDocument);
        }
        catch (JsonException exception)
        {
            throw new SessionFormatException($"This is no saved session: {Place(exception)}.", exception);
        }

        return document switch
        {
            null => throw new SessionFormatException("This is no saved session: it is empty."),
            { Format: not SessionDocument.CurrentFormat } => throw new SessionFormatException(
                $"The saved session has form {document.Format}; this version reads form {SessionDocument.CurrentFormat}."),
            _ => document,
        };
    }

    private static string Place(JsonException exception) =>
        $"line {exception.LineNumber + 1}, column {exception.BytePositionInLine + 1} cannot be read, or a key is missing or unknown there";

    private static Observation Read(ObservationDocument saved, DiagnosisEngine engine)
    {
        var reading = engine.ReadObservation(saved.Id, saved.Value);
        var observation = reading.Observation
            ?? throw new SessionFormatException($"The saved session holds '{saved.Id}: {saved.Value}', which does not fit the pack: {reading.Problem?.Message}");
        observation = observation with
        {
            By = saved.By,
            Trust = saved.Trust,
            WhileWorking = saved.While == "working",
            At = saved.At,
            Note = saved.Note,
        };
        return ObservationCheck.Refusal(engine.Pack, engine.Chassis, observation) is { } refusal
            ? throw new SessionFormatException($"The saved session holds '{saved.Id}: {saved.Value}', which does not fit the pack: {refusal.Message}")
            : observation;
    }
}
