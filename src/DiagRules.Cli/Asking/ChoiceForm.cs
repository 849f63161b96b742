using System.Globalization;
using DiagRules.Cli.Inputs;
using DiagRules.Cli.Rendering;
using DiagRules.Model;

namespace DiagRules.Cli.Asking;

/// <summary>One of several: by number, by word, or by the beginning of a word that no other choice shares.</summary>
/// <param name="choices">The choices, in the order they are numbered.</param>
/// <param name="isOpen">Whether several may be left open: <c>slow or worse</c>, <c>1 or 3</c>.</param>
internal sealed class ChoiceForm(IReadOnlyList<Choice> choices, bool isOpen = false) : AnswerForm
{
    private static readonly string[] Directions = ["worse", "better"];

    /// <summary>The grades of a finding, or whether a cause is there.</summary>
    public static ChoiceForm Of(Graded graded) => graded is Cause
        ? new ChoiceForm([new("absent", "no, absent", "no"), new("present", "yes, present", "yes")]) { IsObservation = true }
        : new ChoiceForm([.. graded.Grades.Select(grade => new Choice(grade, Words.Plain(grade)))], isOpen: true) { IsObservation = true };

    public override void Write(Page page)
    {
        for (var i = 0; i < choices.Count; i++)
        {
            page.Item(2, (i + 1).ToString(CultureInfo.InvariantCulture).PadLeft(2), 4, choices[i].Label);
        }
    }

    public override bool IsWordForWord(string text) => choices.Any(choice => choice.Is(text));

    public override TypedAnswer Read(string text)
    {
        var parts = text.Split(" or ", StringSplitOptions.TrimEntries);
        if (!isOpen || parts.Length == 1)
        {
            return ReadOne(text);
        }

        var taken = parts.Select(part => Directions.Contains(part, StringComparer.OrdinalIgnoreCase) ? new TypedAnswer(part.ToLowerInvariant()) : ReadOne(part)).ToList();
        return taken.FirstOrDefault(part => part.Value is null) is { Remark: not null } wrong
            ? wrong
            : new TypedAnswer(string.Join(" or ", taken.Select(part => part.Value)));
    }

    private TypedAnswer ReadOne(string text)
    {
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
        {
            return number >= 1 && number <= choices.Count
                ? new TypedAnswer(choices[number - 1].Value)
                : new TypedAnswer(null, $"There is no number {number}; there are 1 to {choices.Count}.");
        }

        var fitting = choices.Where(choice => choice.Is(text)).ToList();
        fitting = fitting.Count > 0 ? fitting : [.. choices.Where(choice => choice.BeginsWith(text))];
        return fitting.Count switch
        {
            1 => new TypedAnswer(fitting[0].Value),
            0 => new TypedAnswer(null, $"'{text}' is none of the answers.{Spelling.Hint(text, choices.Select(choice => choice.Value))} Take a number, a word or its beginning; '?' if you cannot tell."),
            _ => new TypedAnswer(null, $"'{text}' could be {string.Join(" or ", fitting.Select(choice => $"'{choice.Value}'"))}."),
        };
    }
}

/// <summary>One choice.</summary>
/// <param name="Value">What is taken when it is chosen.</param>
/// <param name="Label">What is shown.</param>
/// <param name="Synonyms">Other words for it.</param>
internal sealed record Choice(string Value, string Label, params string[] Synonyms)
{
    /// <summary>Whether text is this choice in full.</summary>
    public bool Is(string text) => Spellings.Contains(text, StringComparer.OrdinalIgnoreCase);

    /// <summary>Whether this choice begins with text.</summary>
    public bool BeginsWith(string text) => Spellings.Any(spelling => spelling.StartsWith(text, StringComparison.OrdinalIgnoreCase));

    private IEnumerable<string> Spellings => [Value, Words.Plain(Value), .. Synonyms];
}
