using System.Collections.Immutable;
using System.Text.RegularExpressions;
using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Keys;
using DiagRules.Packs.Layers;
using DiagRules.Packs.Sets;
using DiagRules.Packs.Text;
using DiagRules.Packs.Tree;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Binding;

/// <summary>Reads the head of a pack, and puts into the draft what reading its entries needs.</summary>
internal sealed partial class HeadBinder(Draft draft, Layered pack, PackLoaderOptions options)
{
    public const int Format = 1;

    private readonly MapNode _head = pack.Head;
    private readonly Fields _fields = new(draft, null, pack.Head);

    private ProblemSink Problems => draft.Problems;

    /// <summary>Whether this reader knows the version of the format; reports where not.</summary>
    public static bool IsFormatKnown(MapNode? head, ProblemSink problems)
    {
        if (head?.Find("format")?.Value is not ScalarNode format || format.Value == "1")
        {
            return true;
        }

        problems.Add(
            ProblemCatalogue.FormatNotSupported,
            format.Place,
            $"'format: {Excerpt.Of(format.Value)}' is not supported; this reader knows format {Format}.");
        return false;
    }

    public Head Bind()
    {
        new RequiredKeys(Problems).Check("pack.yaml", _head.Place, _head, FileShapes.PackFile);
        draft.Chassis = Chassis();
        draft.Sets = new SetsReader(draft).Read(_fields.Map("sets"));
        draft.Systems = Systems();
        ReadWords();
        var libraries = new LibraryFinder(options.Calculations, Problems);
        draft.Calculations = libraries.Find(_fields.Texts("calculations"));
        draft.LacksLibrary = libraries.IsAnyMissing;
        var labour = _fields.Text("labour") is { } rate ? draft.Money.ReadRate(rate.Text) : null;
        return new Head
        {
            Id = _fields.Text("pack") is { } id ? IdWords.Read(id.Text, IdKind.Id, Problems) ?? "" : "",
            Version = _fields.Text("version") is { } version ? VersionReader.Read(version.Text, Problems)?.ToString() ?? "" : "",
            Title = _fields.Sentence("title") ?? "",
            Place = _fields.Text("pack")?.Place ?? _head.Place,
            Tree = _head,
            Language = Language(),
            LabourPerHour = labour,
            SpecialistCost = _fields.Text("specialist-cost") is { } cost ? draft.Money.ReadCost(cost.Text) : null,
            Unlisted = _fields.Share("unlisted", "unlisted"),
            Coexistence = Coexistence(),
            Trust = Trust(),
            Acceptance = Acceptance(),
            Accepts = EntryBase.Accepts(_fields, Problems),
        };
    }

    private ImmutableArray<string> Chassis()
    {
        var codes = new List<string>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var text in _fields.Texts("chassis"))
        {
            if (!seen.Add(text.Value))
            {
                Problems.Add(ProblemCatalogue.DuplicateKey, text.Place, $"'{text.Value}' stands twice in 'chassis'; keep one of them.");
            }
            else if (!Code().IsMatch(text.Value))
            {
                Problems.Add(
                    ProblemCatalogue.BadId,
                    text.Place,
                    $"'{Excerpt.Of(text.Value)}' is no chassis code: letters, digits, hyphens, points and underscores, at most 64.");
            }
            else
            {
                codes.Add(text.Value);
            }
        }

        return [.. codes];
    }

    private ImmutableSortedDictionary<string, string> Systems()
    {
        var systems = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var (key, value) in _fields.Map("systems")?.Pairs ?? [])
        {
            if (IdWords.Read(key.Text, IdKind.Id, Problems) is { } word && value is ScalarNode title)
            {
                systems[word] = _fields.Sentence(title);
            }
        }

        return systems.ToImmutable();
    }

    /// <summary>Words of bases are known above them; where two packs give one word a meaning, each keeps its own.</summary>
    private void ReadWords()
    {
        var known = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var (layer, words) in pack.Words)
        {
            foreach (var (key, value) in words?.Pairs ?? [])
            {
                if (IdWords.Read(key.Text, IdKind.Id, Problems) is { } word && value is ScalarNode text
                    && ProbabilityReader.Read(text.Text, ProbabilityWords.Default, Problems) is { } probability)
                {
                    known[word] = probability;
                }
            }

            draft.Words[layer] = known.Count == 0 ? ProbabilityWords.Default : new ProbabilityWords(known);
        }
    }

    private string Language()
    {
        if (_fields.Text("language") is not { } text)
        {
            return "en";
        }

        if (!LanguageTag().IsMatch(text.Value) && !ReservedWords.IsYamlConstant(text.Value))
        {
            Problems.Add(
                ProblemCatalogue.WrongKindOfValue,
                text.Place,
                $"'{Excerpt.Of(text.Value)}' is no language tag; write for example 'en', 'de' or 'pt-BR' (BCP 47).");
        }

        return text.Value;
    }

    private double? Coexistence()
    {
        if (_fields.Probability("coexistence") is not { } coexistence)
        {
            return null;
        }

        if (coexistence == 0)
        {
            Problems.Add(
                ProblemCatalogue.NotAProbability,
                _fields.Text("coexistence")!.Place,
                "'coexistence' is 0, and two faults at once are never impossible; write a small number such as '0.05'.");
        }

        return coexistence;
    }

    private ImmutableDictionary<Skill, double> Trust()
    {
        var trust = ImmutableDictionary.CreateBuilder<Skill, double>();
        foreach (var (key, value) in _fields.Map("trust")?.Pairs ?? [])
        {
            if (SkillWords.Read(key, "trust", Problems) is { } skill && value is ScalarNode text && _fields.Probability(text) is { } probability)
            {
                trust[skill] = probability;
            }
        }

        return trust.ToImmutable();
    }

    private ImmutableDictionary<string, double> Acceptance()
    {
        var acceptance = ImmutableDictionary.CreateBuilder<string, double>(StringComparer.Ordinal);
        if (_fields.Map("acceptance") is { } map)
        {
            var fields = new Fields(draft, null, map);
            foreach (var (measure, value) in (ReadOnlySpan<(string, double?)>)
                [("top-1", fields.Probability("top-1")), ("top-3", fields.Probability("top-3")), ("brier", fields.Amount("brier"))])
            {
                if (value is { } asked)
                {
                    acceptance[measure] = asked;
                }
            }
        }

        return acceptance.ToImmutable();
    }

    [GeneratedRegex(@"^[A-Za-z0-9][A-Za-z0-9._-]{0,63}\z")]
    private static partial Regex Code();

    [GeneratedRegex(@"^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*\z")]
    private static partial Regex LanguageTag();
}
