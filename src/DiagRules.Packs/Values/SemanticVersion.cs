using System.Globalization;
using System.Text.RegularExpressions;

namespace DiagRules.Packs.Values;

/// <summary>A version as semver.org 2.0.0 has it. Immutable; ordered by precedence.</summary>
/// <param name="Major">Incompatible changes.</param>
/// <param name="Minor">Additions.</param>
/// <param name="Patch">Corrections.</param>
/// <param name="Prerelease">What stands behind the dash, or an empty text.</param>
/// <param name="Build">What stands behind the plus; it does not count in the order.</param>
internal sealed partial record SemanticVersion(int Major, int Minor, int Patch, string Prerelease = "", string Build = "") : IComparable<SemanticVersion>
{
    // The expression that semver.org itself offers, groups without names.
    private const string Whole = "(0|[1-9][0-9]*)";
    private const string PrereleasePart = "(?:0|[1-9][0-9]*|[0-9]*[a-zA-Z-][0-9a-zA-Z-]*)";
    private const string BuildPart = "[0-9a-zA-Z-]+";

    /// <summary>The version of a calculation library.</summary>
    public static SemanticVersion From(Version version) => new(version.Major, version.Minor, Math.Max(version.Build, 0));

    /// <summary>Reads a version.</summary>
    public static SemanticVersion? Parse(string text)
    {
        var match = Pattern().Match(text);
        return match.Success && Number(match, 1) is { } major && Number(match, 2) is { } minor && Number(match, 3) is { } patch
            ? new(major, minor, patch, match.Groups[4].Value, match.Groups[5].Value)
            : null;
    }

    /// <summary>Precedence (semver.org 2.0.0, item 11).</summary>
    public int CompareTo(SemanticVersion? other)
    {
        if (other is null)
        {
            return 1;
        }

        var byNumbers = (Major, Minor, Patch).CompareTo((other.Major, other.Minor, other.Patch));
        return byNumbers != 0 ? byNumbers
            : Prerelease.Length == 0 || other.Prerelease.Length == 0 ? (Prerelease.Length == 0).CompareTo(other.Prerelease.Length == 0)
            : ComparePrereleases(Prerelease.Split('.'), other.Prerelease.Split('.'));
    }

    /// <summary>As written.</summary>
    public override string ToString() =>
        $"{Major}.{Minor}.{Patch}{(Prerelease.Length > 0 ? "-" + Prerelease : "")}{(Build.Length > 0 ? "+" + Build : "")}";

    private static int ComparePrereleases(string[] left, string[] right)
    {
        for (var i = 0; i < Math.Min(left.Length, right.Length); i++)
        {
            var byPart = ComparePart(left[i], right[i]);
            if (byPart != 0)
            {
                return byPart;
            }
        }

        return left.Length.CompareTo(right.Length);
    }

    private static int ComparePart(string left, string right)
    {
        var (leftIsNumber, rightIsNumber) = (left.All(char.IsAsciiDigit), right.All(char.IsAsciiDigit));
        if (leftIsNumber && rightIsNumber)
        {
            var byLength = left.Length.CompareTo(right.Length);
            return byLength != 0 ? byLength : string.CompareOrdinal(left, right);
        }

        return leftIsNumber != rightIsNumber ? (leftIsNumber ? -1 : 1) : string.CompareOrdinal(left, right);
    }

    private static int? Number(Match match, int group) =>
        int.TryParse(match.Groups[group].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    [GeneratedRegex($@"^{Whole}\.{Whole}\.{Whole}(?:-({PrereleasePart}(?:\.{PrereleasePart})*))?(?:\+({BuildPart}(?:\.{BuildPart})*))?\z")]
    private static partial Regex Pattern();
}
