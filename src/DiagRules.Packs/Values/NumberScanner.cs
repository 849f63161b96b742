using System.Globalization;
using System.Text.RegularExpressions;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>A number found in a text, or what looks like one.</summary>
/// <param name="Length">How many characters it takes.</param>
/// <param name="Value">The number; NaN when it is not written as a number must be.</param>
/// <param name="Fault">What a message says about it; <see langword="null"/> when it is well written.</param>
internal readonly record struct NumberScan(int Length, double Value, string? Fault);

/// <summary>Reads numbers as packs write them - <c>12</c>, <c>0.5</c>, <c>1e-3</c> - and finds the right spelling of those that are not.</summary>
internal static partial class NumberScanner
{
    // Far more than a double can hold; for anything longer no spelling is looked for.
    private const int LongestAttempt = 100;

    /// <summary>Whether a number, well written or not, begins here: a digit, or a point and a digit.</summary>
    public static bool Begins(ReadOnlySpan<char> text) =>
        text.Length > 0 && (char.IsAsciiDigit(text[0]) || (text[0] == '.' && text.Length > 1 && char.IsAsciiDigit(text[1])));

    /// <summary>Reads the number at the beginning of a text.</summary>
    /// <param name="text">Begins with the number.</param>
    /// <param name="commaSeparates">Whether a comma separates arguments here, so that it cannot be meant as a decimal sign.</param>
    /// <param name="sign">A minus sign that stood before it, for the message.</param>
    public static NumberScan Scan(ReadOnlySpan<char> text, bool commaSeparates = false, string sign = "")
    {
        var length = Extent(text, commaSeparates);
        var run = text[..length];
        if (!IsWellFormed(run))
        {
            return new(length, double.NaN, Fault(run.ToString(), sign));
        }

        var value = double.Parse(run, NumberStyles.Float, CultureInfo.InvariantCulture);
        return double.IsFinite(value)
            ? new(length, value, null)
            : new(length, double.NaN, $"'{sign}{Excerpt.Of(run.ToString())}' is too large: numbers go up to 1.79e308.");
    }

    /// <summary>Takes in all that belongs to the attempt, so that <c>12,5</c> and <c>0x1F</c> are one fault and not several.</summary>
    private static int Extent(ReadOnlySpan<char> text, bool commaSeparates)
    {
        var end = 0;
        while (end < text.Length)
        {
            var digitFollows = end + 1 < text.Length && char.IsAsciiDigit(text[end + 1]);
            var belongs = text[end] switch
            {
                ',' => digitFollows && !commaSeparates,
                ':' or '\'' or '\u2019' => digitFollows,
                '+' or '-' => digitFollows && end > 1 && text[end - 1] is 'e' or 'E' && char.IsAsciiDigit(text[end - 2]),
                '.' or '_' or '%' or '\u00B0' => true,
                var other => char.IsLetterOrDigit(other),
            };
            if (!belongs)
            {
                break;
            }

            end++;
        }

        return end;
    }

    private static bool IsWellFormed(ReadOnlySpan<char> run)
    {
        var at = Digits(run, 0);
        if (at == 0)
        {
            return false;
        }

        if (at < run.Length && run[at] == '.')
        {
            var fraction = Digits(run, at + 1);
            if (fraction == at + 1)
            {
                return false;
            }

            at = fraction;
        }

        if (at < run.Length && run[at] is 'e' or 'E')
        {
            var exponent = at + 1 < run.Length && run[at + 1] is '+' or '-' ? at + 2 : at + 1;
            at = Digits(run, exponent);
            return at > exponent && at == run.Length;
        }

        return at == run.Length;
    }

    private static int Digits(ReadOnlySpan<char> run, int from)
    {
        while (from < run.Length && char.IsAsciiDigit(run[from]))
        {
            from++;
        }

        return from;
    }

    /// <summary>One sentence on what is wrong with it, with the right spelling where there is one.</summary>
    private static string Fault(string run, string sign)
    {
        if (run.Length > LongestAttempt)
        {
            return $"'{sign}{Excerpt.Of(run)}' is not a number: it has {run.Length} characters.";
        }

        if (ClockTime().IsMatch(run))
        {
            return $"'{sign}{run}' is not a number: write one number with a unit, such as '90 s' or '1.5 h'.";
        }

        var spelling = Corrected(run, sign);
        return spelling is null
            ? $"'{sign}{run}' is not a number: write digits with a decimal point, such as '12.5'."
            : $"'{sign}{run}' is not a number as packs write it: write {spelling}.";
    }

    private static string? Corrected(string run, string sign)
    {
        if (run.StartsWith("0x", StringComparison.OrdinalIgnoreCase))
        {
            return ulong.TryParse(run.AsSpan(2), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var value) ? $"'{sign}{value}'" : null;
        }

        if (OneCommaThreeDigits().IsMatch(run))
        {
            return $"'{sign}{run.Replace(",", "", StringComparison.Ordinal)}', or '{sign}{run.Replace(',', '.')}' if the comma is a decimal one";
        }

        if (Grouped().IsMatch(run))
        {
            return $"'{sign}{GroupSigns().Replace(run, "")}'";
        }

        if (PointGrouped().IsMatch(run))
        {
            return $"'{sign}{run.Replace(".", "", StringComparison.Ordinal).Replace(',', '.')}'";
        }

        if (DecimalComma().IsMatch(run))
        {
            return $"'{sign}{run.Replace(',', '.')}'";
        }

        return LooseEnds(run, sign);
    }

    /// <summary><c>.5</c>, <c>5.</c>, <c>1_000</c> and <c>12V</c>.</summary>
    private static string? LooseEnds(string run, string sign)
    {
        var bare = run.Replace("_", "", StringComparison.Ordinal);
        bare = bare.StartsWith('.') ? "0" + bare : bare;
        bare = bare.EndsWith('.') ? bare[..^1] : bare;
        if (IsWellFormed(bare))
        {
            return $"'{sign}{bare}'";
        }

        var unit = NumberAndUnit().Match(bare);
        return unit.Success ? $"'{sign}{unit.Groups[1].Value} {unit.Groups[2].Value}', with one space before the unit" : null;
    }

    [GeneratedRegex(@"^\d{1,2}(:\d{2}){1,2}$")]
    private static partial Regex ClockTime();

    [GeneratedRegex(@"^[1-9]\d{0,2},\d{3}$")]
    private static partial Regex OneCommaThreeDigits();

    [GeneratedRegex(@"^[1-9]\d{0,2}([,'\u2019_]\d{3})+(\.\d+)?$")]
    private static partial Regex Grouped();

    [GeneratedRegex(@"[,'\u2019_]")]
    private static partial Regex GroupSigns();

    [GeneratedRegex(@"^\d{1,3}((\.\d{3})+,\d+|(\.\d{3}){2,})$")]
    private static partial Regex PointGrouped();

    [GeneratedRegex(@"^\d+,\d+([eE][+-]?\d+)?$")]
    private static partial Regex DecimalComma();

    [GeneratedRegex(@"^(\d+(?:\.\d+)?)([^\d.,:'_].*)$")]
    private static partial Regex NumberAndUnit();
}
