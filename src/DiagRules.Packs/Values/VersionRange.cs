using System.Globalization;
using System.Text.RegularExpressions;

namespace DiagRules.Packs.Values;

/// <summary>Versions that will do: <c>1.2.3</c> (just that), <c>1.x</c> (any 1), <c>1.2.x</c> (any 1.2). Immutable.</summary>
/// <remarks>A version before its release (<c>1.2.0-beta</c>) will do only where it is asked for by name.</remarks>
internal sealed partial record VersionRange
{
    private readonly SemanticVersion _least;
    private readonly int _fixedNumbers;

    private VersionRange(SemanticVersion least, int fixedNumbers, string text)
    {
        _least = least;
        _fixedNumbers = fixedNumbers;
        Text = text;
    }

    /// <summary>As written.</summary>
    public string Text { get; }

    /// <summary>Reads a range.</summary>
    public static VersionRange? Parse(string text)
    {
        if (SemanticVersion.Parse(text) is { } exact)
        {
            return new(exact, 3, text);
        }

        var match = Pattern().Match(text);
        if (!match.Success || !TryNumber(match, 1, out var major))
        {
            return null;
        }

        return match.Groups[2].Success
            ? TryNumber(match, 2, out var minor) ? new(new(major, minor, 0), 2, text) : null
            : new(new(major, 0, 0), 1, text);
    }

    /// <summary>Whether a version will do.</summary>
    public bool Contains(SemanticVersion version) => _fixedNumbers == 3
        ? version.CompareTo(_least) == 0
        : version.Prerelease.Length == 0 && version.Major == _least.Major && (_fixedNumbers == 1 || version.Minor == _least.Minor);

    /// <summary>As written.</summary>
    public override string ToString() => Text;

    private static bool TryNumber(Match match, int group, out int number) =>
        int.TryParse(match.Groups[group].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out number);

    [GeneratedRegex(@"^(0|[1-9][0-9]*)\.(?:(0|[1-9][0-9]*)\.)?x\z")]
    private static partial Regex Pattern();
}
