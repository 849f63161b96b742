using System.Globalization;
using DiagRules.Model.Problems;

namespace DiagRules.Packs.Text;

/// <summary>Gets the text of a pack's files, within the limits, and makes sure an editor shows all of it.</summary>
/// <param name="files">The files.</param>
/// <param name="pack">Id of the pack, for places.</param>
/// <param name="limits">The limits.</param>
internal sealed class FileReader(PackFiles files, string pack, PackLimits limits)
{
    private long _bytes;

    /// <summary>Reads one file.</summary>
    /// <returns>The text, or <see langword="null"/> with the problem reported.</returns>
    public SourceText? Read(string path, ProblemSink problems)
    {
        var shown = files.Display(path);
        if (path.Split('/').Contains("..") || Path.IsPathRooted(path))
        {
            problems.Add(ProblemCatalogue.PathLeavesPack, new(pack, path, 0, 0), $"'{path}' leads out of the pack; a pack reads only what lies in its folder.");
            return null;
        }

        var bytes = ReadBytes(path, shown, problems);
        var decoded = bytes is null ? null : Decoding.Decode(bytes, pack, shown, problems);
        return decoded is null || ConflictMarks.Report(decoded, problems) ? null : HiddenCharacters.Check(decoded, problems);
    }

    private byte[]? ReadBytes(string path, string shown, ProblemSink problems)
    {
        byte[] bytes;
        try
        {
            bytes = files.Read(path, limits.FileBytes);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            problems.Add(ProblemCatalogue.NoPackFile, new(pack, shown, 0, 0), $"'{path}' cannot be read: {Reason(exception)}.");
            return null;
        }

        if (bytes.Length > limits.FileBytes)
        {
            Exceeded(shown, $"'{path}' is larger than {Bytes(limits.FileBytes)}, the limit of a file", nameof(PackLimits.FileBytes), problems);
            return null;
        }

        var before = _bytes;
        _bytes += bytes.Length;
        if (_bytes <= limits.PackBytes)
        {
            return bytes;
        }

        if (before <= limits.PackBytes)
        {
            Exceeded(shown, $"'{path}' brings the pack to {Bytes(_bytes)}; the limit of a pack is {Bytes(limits.PackBytes)}", nameof(PackLimits.PackBytes), problems);
        }

        return null;
    }

    private void Exceeded(string shown, string what, string setting, ProblemSink problems) =>
        problems.Add(ProblemCatalogue.LimitExceeded, new(pack, shown, 0, 0), $"{what} (setting '{setting}').");

    private static string Bytes(long count) => string.Create(CultureInfo.InvariantCulture, $"{count} bytes");

    /// <summary>In words of our own: messages of the operating system hold absolute paths.</summary>
    private static string Reason(Exception exception) => exception switch
    {
        UnauthorizedAccessException => "access is not allowed",
        FileNotFoundException or DirectoryNotFoundException => "it is not there",
        _ => "the system reports a fault",
    };
}
