using System.Globalization;
using System.Text;
using DiagRules.Model.Problems;
using DiagRules.Packs.Conditions;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Values;

/// <summary>What a word names.</summary>
internal enum IdKind
{
    /// <summary>An entry, a pack, a case.</summary>
    Id,

    /// <summary>The id of a template, which may hold <c>$set</c>.</summary>
    Template,

    /// <summary>A grade.</summary>
    Grade,
}

/// <summary>Reads ids and grades: kebab-case, at most 64 characters.</summary>
internal static class IdReader
{
    /// <summary>Characters an id may have.</summary>
    public const int Longest = 64;

    /// <summary>The id, or <see langword="null"/> after reporting.</summary>
    /// <param name="text">The text.</param>
    /// <param name="kind">What it names.</param>
    /// <param name="problems">Where problems go.</param>
    /// <param name="isPattern">Whether the built-in finding <c>pattern</c> may stand here.</param>
    public static string? Read(PlacedText text, IdKind kind, ProblemSink problems, bool isPattern = false)
    {
        var id = text.Value;
        var what = kind == IdKind.Grade ? "grade" : "id";
        if (ReservedWords.IsYamlConstant(id))
        {
            Report(text, ProblemCatalogue.TrueFalseOrNull,
                $"'{Excerpt.Of(id)}' as {Wording.An(what)} is read by other tools in their own way; " +
                "pick another word.",
                problems);
            return null;
        }

        if (!IsWellFormed(id, kind))
        {
            Report(text, ProblemCatalogue.BadId, Fault(id, what), problems);
            return null;
        }

        if (ReservedWords.PurposeOf(id) is { } purpose && !(isPattern && id == Model.Finding.Pattern))
        {
            Report(text, ProblemCatalogue.ReservedWord, $"'{id}' is reserved for {purpose} and cannot be {Wording.An(what)}; pick another word.", problems);
            return null;
        }

        return id;
    }

    /// <summary>Whether a word has the shape of an id; reserved words have it too.</summary>
    public static bool IsWellFormed(string id, IdKind kind = IdKind.Id)
    {
        if (kind == IdKind.Template)
        {
            // Members are ids themselves, so a letter stands for them.
            id = SetNames.Replace(id, set => set.Length > 0 ? "m" : null);
        }

        if (id.Length is 0 or > Longest || !char.IsAsciiLetterLower(id[0]) || id[^1] == '-')
        {
            return false;
        }

        for (var i = 1; i < id.Length; i++)
        {
            if (!char.IsAsciiLetterLower(id[i]) && !char.IsAsciiDigit(id[i]) && !(id[i] == '-' && id[i - 1] != '-'))
            {
                return false;
            }
        }

        return true;
    }

    private static string Fault(string id, string what)
    {
        var rule = $"small letters, digits and single dashes, a letter first, at most {Longest} characters";
        var proposal = Proposal(id);
        return proposal.Length == 0
            ? $"'{Excerpt.Of(id)}' is not {Wording.An(what)}: {rule}."
            : $"'{Excerpt.Of(id)}' is not {Wording.An(what)}: {rule}. Write '{proposal}'.";
    }

    /// <summary>The nearest text that is an id, or nothing when no letter is left.</summary>
    internal static string Proposal(string text)
    {
        // What is no letter parts words; it goes first, since the normalisation below refuses some of it.
        var letters = string.Concat(text.Take(2 * Longest).Select(letter => char.IsLetterOrDigit(letter) && !char.IsSurrogate(letter) ? letter : '-'));
        var isCamelCase = !letters.Contains('-', StringComparison.Ordinal) && letters.Any(char.IsAsciiLetterLower);
        var id = new StringBuilder(letters.Length);
        foreach (var letter in letters.Normalize(NormalizationForm.FormD))
        {
            var last = id.Length > 0 ? id[^1] : '-';
            if (char.IsAsciiLetterOrDigit(letter))
            {
                var beginsWord = isCamelCase && char.IsAsciiLetterUpper(letter) && char.IsAsciiLetterLower(last);
                id.Append(beginsWord ? "-" : "").Append(char.ToLowerInvariant(letter));
            }
            else if (CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark && last != '-')
            {
                id.Append('-');
            }
        }

        var proposal = id.ToString().Trim('-');
        proposal = proposal.Length > 0 && char.IsAsciiDigit(proposal[0]) ? "n" + proposal : proposal;
        return proposal.Length <= Longest ? proposal : proposal[..Longest].TrimEnd('-');
    }

    private static void Report(PlacedText text, ProblemDescriptor descriptor, string message, ProblemSink problems) =>
        problems.Add(descriptor, text.At(0, text.Value.Length), message);
}
