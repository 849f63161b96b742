using System.Globalization;
using System.Text;
using System.Text.Unicode;
using DiagRules.Model.Problems;

namespace DiagRules.Packs.Text;

/// <summary>Bytes to text: strict UTF-8 without its byte order mark.</summary>
internal static class Decoding
{
    private static ReadOnlySpan<byte> Utf8Mark => [0xEF, 0xBB, 0xBF];

    /// <summary>The text, or <see langword="null"/> with the problem reported.</summary>
    public static SourceText? Decode(byte[] bytes, string pack, string file, ProblemSink problems)
    {
        ReadOnlySpan<byte> content = bytes;
        var skipped = content.StartsWith(Utf8Mark) ? Utf8Mark.Length : 0;
        content = content[skipped..];
        if (Utf8.IsValid(content))
        {
            return new SourceText(pack, file, Encoding.UTF8.GetString(content));
        }

        var (valid, offset) = ValidPart(content);
        var place = new SourceText(pack, file, valid).At(valid.Length);
        var found = string.Create(CultureInfo.InvariantCulture, $"byte 0x{content[offset]:X2} at offset {offset + skipped}");
        problems.Add(ProblemCatalogue.NotUtf8OrHiddenCharacter, place, $"'{found}' is not UTF-8; save the file as UTF-8{Guess(bytes)}.");
        return null;
    }

    private static (string Text, int Bytes) ValidPart(ReadOnlySpan<byte> content)
    {
        var characters = new char[content.Length];
        Utf8.ToUtf16(content, characters, out var read, out var written, replaceInvalidSequences: false, isFinalBlock: true);
        return (new string(characters, 0, written), read);
    }

    private static string Guess(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith([(byte)0xFF, (byte)0xFE]) || bytes.StartsWith([(byte)0xFE, (byte)0xFF]) ? " (it looks like UTF-16)" : "";
}
