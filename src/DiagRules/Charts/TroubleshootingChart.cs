using System.Collections.Immutable;
using DiagRules.Charts.Drawing;
using DiagRules.Charts.Picture;
using DiagRules.Model;
using DiagRules.Results;

namespace DiagRules.Charts;

/// <summary>
/// What a session would propose whatever the answers, as a chart for paper: boxes that lead to each other until a repair cures the complaint or a
/// specialist takes over. A plain value, immutable and thread-safe.
/// </summary>
/// <remarks>
/// Every box is planned anew in a copy of the session that knows the answers on the way there, so rules, deferrals, <c>skip-if</c> and rule-outs hold.
/// An answer is entered as the grade of a finding, never as an invented value; what rules make of values alone is therefore not drawn, and a step that
/// such a rule can keep back says so (<see cref="ChartBox.NotWhile"/>). A check that decides several findings is asked one finding at a time, the
/// most telling first, as long as they tell anything. Boxes from which everything goes on alike are one box.
/// </remarks>
/// <example>
/// <code>
/// var session = engine.Start(new SessionOptions { Complaint = "will-not-lift", Skill = Skill.Workshop });
/// File.WriteAllText("will-not-lift.html", TroubleshootingChart.Draw(session).ToHtml());
/// </code>
/// </example>
public sealed record TroubleshootingChart
{
    /// <summary>Id of the pack.</summary>
    public required string Pack { get; init; }

    /// <summary>Version of the pack.</summary>
    public required string Version { get; init; }

    /// <summary>Title of the pack.</summary>
    public required string PackTitle { get; init; }

    /// <summary>Language of the pack's texts, a BCP 47 tag.</summary>
    public string Language { get; init; } = "en";

    /// <summary>Chassis code, or <see langword="null"/> when the pack makes no difference.</summary>
    public string? Chassis { get; init; }

    /// <summary>Id of the complaint, or <see langword="null"/>.</summary>
    public string? Complaint { get; init; }

    /// <summary>Title of the complaint, or <see langword="null"/>.</summary>
    public string? ComplaintTitle { get; init; }

    /// <summary>Who works on the machine, or <see langword="null"/> for nobody in particular.</summary>
    public Skill? Skill { get; init; }

    /// <summary>What is known before the first box, beside the complaint: finding and grade, or reading and value.</summary>
    public ImmutableArray<string> Known { get; init; } = [];

    /// <summary>Expected cost until the complaint is gone, minutes' worth.</summary>
    public double ExpectedCost { get; init; }

    /// <summary>Hazards there are before the first step, gravest first.</summary>
    public ImmutableArray<HazardNotice> HazardsFromTheStart { get; init; } = [];

    /// <summary>Every hazard of the chart, gravest first.</summary>
    public ImmutableArray<HazardNotice> Hazards { get; init; } = [];

    /// <summary>The boxes; box <c>n</c> is at <c>n - 1</c>. There is at least one.</summary>
    public required ImmutableArray<ChartBox> Boxes { get; init; }

    /// <summary>How each step is done, in the order in which the boxes come to them.</summary>
    public ImmutableArray<ChartStep> Steps { get; init; } = [];

    /// <summary>Probability that a job leaves the chart where it is cut, 0..1.</summary>
    public double Beyond { get; init; }

    /// <summary>Draws the chart of what would be done from where a session stands. The session stays as it is.</summary>
    /// <param name="session">The session: its complaint, observations, skill and tools count.</param>
    /// <param name="options">How far to draw; the defaults when <see langword="null"/>.</param>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <remarks>Costs about one diagnosis a place. The same session and options give the same chart, to the last digit.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An option is out of its range.</exception>
    /// <exception cref="EngineException">Weighing would go beyond the engine's budget.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static TroubleshootingChart Draw(DiagnosisSession session, ChartOptions? options = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(session);
        options ??= new ChartOptions();
        options.ThrowIfOutOfRange();
        return new ChartWriter(session).Write(new ChartDraftsman(session, options, cancellationToken).Draw());
    }

    /// <summary>The chart as plain text: numbered boxes, each answer with the number to go on at.</summary>
    /// <param name="width">Columns a line may fill, at least 40.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="width"/> is below 40.</exception>
    public string ToText(int width = 80)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 40);
        return new ChartText(this, width).Write();
    }

    /// <summary>The chart as one SVG document: sheets of A4 across, one below the other.</summary>
    public string ToSvg() => new ChartSvg(this).Document();

    /// <summary>The chart as one HTML document to print: the sheets, and then how each step is done with its hazards in full.</summary>
    public string ToHtml() => new ChartHtml(this).Document();
}
