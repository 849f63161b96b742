using System.Text.Json;
using System.Text.Json.Nodes;

namespace DiagRules.Cli.Asking;

/// <summary>Where a session is kept. It is written after every answer, so that nothing that ends the process can lose one.</summary>
internal sealed class SessionFile
{
    /// <summary>The path, or <see langword="null"/> while the session is kept nowhere.</summary>
    public string? Path { get; private set; }

    /// <summary>Takes a path to write to from now on.</summary>
    /// <exception cref="WrongUseException">Something else is there already, or its folder is not.</exception>
    public void Use(string path, bool mayExist = false)
    {
        if (!mayExist && path != Path && System.IO.Path.Exists(path))
        {
            throw new WrongUseException($"'{path}' is there already; '--resume {path}' goes on with it, or name another file.");
        }

        var folder = System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(path));
        if (!Directory.Exists(folder))
        {
            throw new WrongUseException($"There is no folder '{System.IO.Path.GetDirectoryName(path)}' to save '{System.IO.Path.GetFileName(path)}' in.");
        }

        Path = path;
    }

    /// <summary>Reads a saved session.</summary>
    /// <exception cref="WrongUseException">There is no such file, or it cannot be read.</exception>
    public static string Read(string path)
    {
        try
        {
            return File.ReadAllText(path);
        }
        catch (Exception exception) when (exception is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new WrongUseException($"There is no file '{path}'.", exception);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new WrongUseException($"'{path}' cannot be read: {exception.Message}", exception);
        }
    }

    /// <summary>
    /// The chassis a saved session is for, so that nobody has to name it again; <see langword="null"/> when it says none or is no saved
    /// session, which resuming it reports better.
    /// </summary>
    public static string? ChassisOf(string? saved)
    {
        try
        {
            return saved is null ? null : JsonNode.Parse(saved) is JsonObject document && document["chassis"] is JsonValue chassis ? chassis.ToString() : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>Writes the session, if a path is known.</summary>
    /// <exception cref="WrongUseException">It cannot be written there.</exception>
    public void Write(DiagnosisSession session)
    {
        if (Path is null)
        {
            return;
        }

        try
        {
            // By way of a second file: a half-written one never takes the place of the last good one.
            var beside = Path + ".new";
            File.WriteAllText(beside, session.Save());
            File.Move(beside, Path, overwrite: true);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new WrongUseException($"The session cannot be saved in '{Path}': {exception.Message}", exception);
        }
    }
}
