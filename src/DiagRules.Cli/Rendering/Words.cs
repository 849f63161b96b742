using System.Globalization;
using DiagRules.Model;

namespace DiagRules.Cli.Rendering;

/// <summary>Numbers and ids in words that can be read aloud.</summary>
internal static class Words
{
    /// <summary>Whole percent; what would round to nothing or to everything says so.</summary>
    public static string Percent(double probability) => probability switch
    {
        > 0 and < 0.005 => "<1 %",
        >= 0.995 and < 1 => ">99 %",
        _ => Math.Round(probability * 100, MidpointRounding.AwayFromZero).ToString("0", CultureInfo.InvariantCulture) + " %",
    };

    /// <summary>How far a cause is believed, in words.</summary>
    public static string Belief(double confidence) => confidence switch
    {
        0 => "ruled out",
        < 0.05 => "remote",
        < 0.15 => "unlikely",
        < 0.40 => "possible",
        < 0.60 => "about even",
        < 0.80 => "likely",
        < 0.95 => "very likely",
        _ => "almost certain",
    };

    /// <summary>Minutes, from two hours on with hours.</summary>
    public static string Minutes(double minutes)
    {
        var whole = (int)Math.Round(minutes, MidpointRounding.AwayFromZero);
        var words = whole switch
        {
            0 when minutes > 0 => "less than a minute",
            1 => "1 minute",
            < 120 => Number(whole) + " minutes",
            _ when whole % 60 == 0 => Number(whole / 60) + " hours",
            _ => $"{Number(whole / 60)} h {Number(whole % 60)} min",
        };
        return Page.Together(words);
    }

    /// <summary>Who can do something.</summary>
    public static string Who(Skill skill) => skill switch
    {
        Skill.Owner => "the owner",
        Skill.OwnerWithMeter => "an owner with a meter",
        Skill.Workshop => "a workshop",
        _ => "a specialist",
    };

    /// <summary>A skill as packs and options write it.</summary>
    public static string Code(Skill skill) => skill switch
    {
        Skill.Owner => "owner",
        Skill.OwnerWithMeter => "owner-with-meter",
        Skill.Workshop => "workshop",
        _ => "specialist",
    };

    /// <summary>An id or a grade as words: <c>clicks-once</c> is "clicks once".</summary>
    public static string Plain(string id) => id.Replace('-', ' ');

    /// <summary>What an observation does, as odds: decibans are ten times the logarithm of how much better they get.</summary>
    public static string Odds(double decibans)
    {
        if (double.IsInfinity(decibans))
        {
            return decibans > 0 ? "proves it" : "excludes it";
        }

        var ratio = Math.Pow(10, Math.Abs(decibans) / 10);
        var times = ratio switch
        {
            >= 1000 => "over 1000",
            >= 10 => ratio.ToString("0", CultureInfo.InvariantCulture),
            _ => ratio.ToString("0.#", CultureInfo.InvariantCulture),
        };
        return Page.Together($"{times} to 1 {(decibans > 0 ? "for it" : "against it")}");
    }

    /// <summary>A number of things with the right ending.</summary>
    public static string Count(int count, string one, string many) => count == 1 ? "1 " + one : Number(count) + " " + many;

    /// <summary>Several texts as one: <c>a, b and c</c>.</summary>
    public static string List(IEnumerable<string> texts)
    {
        var all = texts.ToList();
        return all.Count < 2 ? string.Concat(all) : string.Join(", ", all[..^1]) + " and " + all[^1];
    }

    /// <summary>A text with a capital at its beginning.</summary>
    public static string Sentence(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
