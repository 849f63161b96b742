using System.Globalization;
using System.Text;
using System.Text.Json;
using DiagRules.Packs;

namespace DiagRules.Tests;

/// <summary>
/// The whole way from the text of a pack to confidences, against exhaustive enumeration in exact rationals (Data/README.md). The soft
/// observations of that file state likelihoods per grade, which no observation can say; the tests of the numerics hold those.
/// </summary>
public sealed class SessionExamplesTests
{
    private const double Tolerance = 1e-9;
    private static readonly JsonElement Items = JsonDocument.Parse(File.ReadAllText("Data/session-examples.json")).RootElement.GetProperty("items");

    public static TheoryData<string, int> Cases
    {
        get
        {
            var data = new TheoryData<string, int>();
            foreach (var item in Items.EnumerateArray())
            {
                var number = 0;
                foreach (var @case in item.GetProperty("cases").EnumerateArray())
                {
                    if (!@case.GetProperty("soft").EnumerateObject().Any())
                    {
                        data.Add(item.GetProperty("id").GetString()!, number);
                    }

                    number++;
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Confidences_equal_the_enumerated_ones(string id, int number)
    {
        var item = Items.EnumerateArray().Single(candidate => candidate.GetProperty("id").GetString() == id);
        var expected = item.GetProperty("cases")[number];
        var session = DiagnosisEngine.Compile(new PackLoader().Load(PackFiles.FromText(("pack.yaml", TextOf(item.GetProperty("pack"))))).Require()).Start();

        foreach (var observed in expected.GetProperty("observations").EnumerateObject())
        {
            session.Observe(observed.Name, observed.Value.GetString()!).Problem.ShouldBeNull();
        }

        Observe(session, expected.GetProperty("ruled_out"), cause => (cause, "absent"));
        Observe(session, expected.GetProperty("observed_present"), cause => (cause, "present"));
        Observe(session, expected.GetProperty("repair_failed_for"), cause => ($"repair-{cause}", "no-change"));

        var diagnosis = session.Diagnose();
        diagnosis.Unlisted!.Value.ShouldBe(expected.GetProperty("answer").GetProperty("(unlisted)").GetDouble(), Tolerance);
        foreach (var hypothesis in diagnosis.Hypotheses)
        {
            hypothesis.Confidence.ShouldBe(expected.GetProperty("answer").GetProperty(hypothesis.Cause).GetDouble(), Tolerance, hypothesis.Cause);
        }
    }

    private static void Observe(DiagnosisSession session, JsonElement causes, Func<string, (string Id, string Value)> observation)
    {
        foreach (var cause in causes.EnumerateArray())
        {
            var (id, value) = observation(cause.GetString()!);
            session.Observe(id, value).Problem.ShouldBeNull();
        }
    }

    private static string TextOf(JsonElement pack)
    {
        var text = new StringBuilder();
        text.AppendLine("format: 1\npack: enumerated\nversion: 1.0.0\ntitle: Enumerated");
        text.AppendLine(CultureInfo.InvariantCulture, $"unlisted: {pack.GetProperty("unlisted")}\ncoexistence: {pack.GetProperty("coexistence")}");
        var shows = ShowsByParent(pack.GetProperty("nodes"));
        AppendCauses(text, pack.GetProperty("causes"), shows);
        AppendNodes(text, pack.GetProperty("nodes"), shows, "effect");
        AppendNodes(text, pack.GetProperty("nodes"), shows, "finding");
        return text.ToString();
    }

    private static ILookup<string, string> ShowsByParent(JsonElement nodes) =>
        nodes.EnumerateObject()
            .SelectMany(node => node.Value.GetProperty("parents").EnumerateObject().Select(parent => (
                parent.Name,
                Shown: parent.Value.EnumerateObject().Select(grade => (Child: node.Name, Grade: grade.Name, Map: Flow(grade.Value))))))
            .SelectMany(pair => pair.Shown.Select(shown => (pair.Name, shown)))
            .GroupBy(pair => pair.Name)
            .SelectMany(parent => parent.GroupBy(pair => pair.shown.Grade)
                .Select(grade => (parent.Key, Text: $"{grade.Key}: {{ {string.Join(", ", grade.Select(pair => $"{pair.shown.Child}: {pair.shown.Map}"))} }}")))
            .ToLookup(pair => pair.Key, pair => pair.Text);

    private static void AppendCauses(StringBuilder text, JsonElement causes, ILookup<string, string> shows)
    {
        text.AppendLine("causes:");
        foreach (var cause in causes.EnumerateObject())
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"  {cause.Name}: {{ title: Cause {cause.Name}, share: {cause.Value.GetProperty("share")}, repair: repair-{cause.Name}{ShowsOf(cause.Name, shows)} }}");
        }

        text.AppendLine("repairs:");
        foreach (var cause in causes.EnumerateObject())
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"  repair-{cause.Name}: {{ title: Repair {cause.Name}, minutes: 10 }}");
        }
    }

    private static void AppendNodes(StringBuilder text, JsonElement nodes, ILookup<string, string> shows, string kind)
    {
        var section = nodes.EnumerateObject().Where(node => node.Value.GetProperty("kind").GetString() == kind).ToList();
        if (section.Count == 0)
        {
            return;
        }

        text.AppendLine(CultureInfo.InvariantCulture, $"{kind}s:");
        foreach (var node in section)
        {
            var grades = string.Join(", ", node.Value.GetProperty("grades").EnumerateArray().Select(grade => grade.GetString()));
            var question = kind == "finding" ? "question: How is it, " : "";
            text.AppendLine(CultureInfo.InvariantCulture, $"  {node.Name}: {{ {question}title: Node {node.Name}, grades: [{grades}], background: {Flow(node.Value.GetProperty("background"))}{ShowsOf(node.Name, shows)} }}");
        }
    }

    private static string ShowsOf(string parent, ILookup<string, string> shows) =>
        shows.Contains(parent) ? $", shows: {{ {string.Join(", ", shows[parent])} }}" : "";

    private static string Flow(JsonElement map) =>
        $"{{ {string.Join(", ", map.EnumerateObject().Select(pair => $"{pair.Name}: {pair.Value.GetRawText()}"))} }}";
}
