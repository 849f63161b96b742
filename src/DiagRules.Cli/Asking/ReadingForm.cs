using System.Globalization;
using System.Text.RegularExpressions;
using DiagRules.Cli.Rendering;
using DiagRules.Model;
using DiagRules.Model.Quantities;

namespace DiagRules.Cli.Asking;

/// <summary>A measured value: a number takes the pack's unit, and a unit written close to its number is taken as well.</summary>
internal sealed partial class ReadingForm(Reading reading) : AnswerForm
{
    private bool IsBare => reading.Unit == Unit.Number;

    public override void Write(Page page)
    {
        var unit = IsBare ? "A number" : $"A value in {reading.Unit}, or with its own unit";
        var plausible = reading.Plausible is { } range ? $"; plausible is {Page.Together(range.ToString())}" : "";
        page.Text(2, $"{unit}{plausible}.", Ink.Faint);
    }

    public override TypedAnswer Read(string text)
    {
        // What most meters show when the value is beyond their range.
        if (text.Equals("OL", StringComparison.OrdinalIgnoreCase))
        {
            return new TypedAnswer("over-range", "Taken as over range: the meter shows no path.");
        }

        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number))
        {
            return IsBare ? new TypedAnswer(text) : new TypedAnswer($"{text} {reading.Unit}", $"Taken as {text} {reading.Unit}.");
        }

        var close = NumberAndUnit().Match(text);
        return new TypedAnswer(close.Success ? $"{close.Groups[1].Value} {close.Groups[2].Value}" : text);
    }

    [GeneratedRegex(@"^([+-]?[0-9]+(?:\.[0-9]+)?)([A-Za-z%].*)$")]
    private static partial Regex NumberAndUnit();
}
