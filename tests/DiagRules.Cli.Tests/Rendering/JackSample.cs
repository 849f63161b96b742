using DiagRules.Model;
using DiagRules.Model.Quantities;
using DiagRules.Results;

namespace DiagRules.Cli.Tests.Rendering;

/// <summary>An invented levelling jack, small enough to read, with one of everything a page can show.</summary>
internal static class JackSample
{
    private static readonly Hazard Crushing = new()
    {
        Id = "crushed-under-frame",
        Index = 0,
        Title = "crushed-under-frame",
        SignalWord = SignalWord.Danger,
        Symbol = "W019",
        Says = "The vehicle can drop off a jack and crush.",
        Avoid = "Nobody under it while a jack moves.",
        Clears = "Wheels on the ground or stands under the frame.",
    };

    private static readonly Hazard Feed = new()
    {
        Id = "unfused-feed",
        Index = 1,
        Title = "unfused-feed",
        SignalWord = SignalWord.Warning,
        Symbol = "W012",
        Says = "The battery post is not fused.",
        Avoid = "Take off rings and watch.",
    };

    public static Pack Pack { get; } = new()
    {
        Id = "tarn-p3-jack",
        Version = "1.4.0",
        Title = "Tarn P3 levelling jack",
        Chassis = ["P3", "P3-L"],
        Nodes = [Brushes, Contactor, PowerUnit],
        Causes = [Brushes, Contactor],
        Complaints = [new Complaint { Id = "will-not-extend", Index = 0, Title = "Jack does not extend" }],
        Hazards = [Crushing, Feed],
        Access = [new Access { Id = "cover-off", Index = 0, Title = "Cover of the power unit off", Minutes = 6, Tools = ["bit 30"], Instructions = ["Isolator off.", "Take out four bolts."] }],
        Checks =
        [
            new Check
            {
                Id = "tap-motor", Index = 0, Title = "Tap the motor housing while a helper holds OUT", Gives = ["after-tap"], Minutes = 2, Needs = ["cover-off"],
                Tools = ["hammer with a plastic face"], Instructions = ["Reach in from outside.", "Stop at the first start."],
            },
            new Check { Id = "try-jack", Index = 1, Title = "Run the jack out and in", Gives = ["power-unit"], Minutes = 3 },
        ],
        Repairs =
        [
            new Repair
            {
                Id = "renew-brushes", Index = 0, Title = "Renew the brushes", Minutes = 45, Parts = ["brush set 24 V", "gasket of the end cap"],
                Fasteners = [new Fastener("bolts of the end cap", new Quantity(10, Unit("mm")), new Quantity(6, Unit("N.m")))],
                Tools = ["bit 30"], Instructions = ["Note which way the brush leads run."], VerifyBy = [new Verification("try-jack", 10, [])],
            },
        ],
        Rules = [],
    };

    private static Cause Brushes => new()
    {
        Id = "motor-brushes-worn",
        Index = 0,
        Node = 0,
        Title = "Motor brushes worn",
        Grades = Cause.AbsentPresent,
        Share = 9,
        Repairs = [new Cure("renew-brushes", 1)],
        Hazards = ["crushed-under-frame"],
    };

    private static Cause Contactor => new() { Id = "contactor-burnt", Index = 1, Node = 1, Title = "Contactor contacts burnt", Grades = Cause.AbsentPresent, Share = 6 };

    private static Finding PowerUnit => new()
    {
        Id = "power-unit",
        Index = 0,
        Node = 2,
        Title = "Hold OUT for two seconds. What do you hear?",
        Question = "Hold OUT for two seconds. What do you hear?",
        Grades = ["runs-normally", "clicks-once"],
    };

    public static NextStep Tap { get; } = new()
    {
        Kind = StepKind.Check,
        Id = "tap-motor",
        Title = "Tap the motor housing while a helper holds OUT",
        Skill = Skill.Workshop,
        Minutes = 8,
        Cost = 8,
        ExpectedCostAfter = 92.4,
        TellsApart = ["motor-brushes-worn", "contactor-burnt"],
        Why = "It tells worn brushes from burnt contacts.",
        Opens = ["cover-off"],
        Hazards = ["crushed-under-frame", "unfused-feed"],
        Answers =
        [
            new AnswerOutlook("after-tap is no-change", 0.55, "contactor-burnt", 0.48),
            new AnswerOutlook("after-tap is runs", 0.45, "motor-brushes-worn", 0.971),
        ],
    };

    public static NextStep RenewBrushes { get; } = new()
    {
        Kind = StepKind.Repair,
        Id = "renew-brushes",
        Title = "Renew the brushes",
        Skill = Skill.Workshop,
        Minutes = 51,
        Cost = 69,
        ExpectedCostAfter = 20,
        Why = "Nothing cheaper is likely to change the answer.",
        Opens = ["cover-off"],
        Hazards = ["crushed-under-frame"],
    };

    public static Diagnosis Diagnosis { get; } = new()
    {
        Pack = "tarn-p3-jack",
        Version = "1.4.0",
        Chassis = "P3",
        Complaint = "will-not-extend",
        Hypotheses =
        [
            new Hypothesis("motor-brushes-worn", "Motor brushes worn", 0.6234, ["renew-brushes"]),
            new Hypothesis("contactor-burnt", "Contactor contacts burnt", 0.2911, []),
            new Hypothesis("pump-seized", "Pump seized", 0.0042, []),
            new Hypothesis("fuse-blown", "Main fuse blown", 0, []),
        ],
        Unlisted = 0.0813,
        ExpectedCost = 100.4,
        AlsoPresent = [new AlsoPresent("contactor-burnt", "Contactor contacts burnt", 0.31)],
        Findings =
        [
            new KnownFinding("power-unit", "Hold OUT for two seconds. What do you hear?", "clicks-once", ["observation"], 0.9),
            new KnownFinding("battery-rest", "Battery at rest", "charged", ["readings"], 1),
        ],
        Readings = [new KnownReading("battery-rest-volts", "Volts across the battery at rest", 25.1, "V", 0.083)],
        Next = [Tap, RenewBrushes],
        Advice = [new Advice("no-new-fuse-yet", "Do not fit a new fuse before the motor is proved.", "It opens again at once.")],
        Hazards =
        [
            new HazardNotice("crushed-under-frame", SignalWord.Danger, "W019", Crushing.Says, Crushing.Avoid, Crushing.Clears, ["motor-brushes-worn", "tap-motor"]),
            new HazardNotice("unfused-feed", SignalWord.Warning, "W012", Feed.Says, Feed.Avoid, Feed.Clears, ["tap-motor"]),
        ],
        Deferred = [new Deferral("renew-brushes", "no-new-fuse-yet", "It opens again at once.")],
        Contradictions = [new Contradiction("oil-level", "Oil in the tank", [new("low", "observation"), new("between-marks", "level-is-fine")])],
        Notes = ["The plan looked two steps ahead."],
    };

    public static CauseExplanation Leading { get; } = new(
        "motor-brushes-worn", "Motor brushes worn", 0.09, 0.6234,
        [
            new EvidenceWeight("power-unit", "Hold OUT for two seconds. What do you hear?", "clicks-once", 11.3),
            new EvidenceWeight("battery-rest", "Battery at rest", "charged", -2.04),
            new EvidenceWeight("cab-lamp", "Lamp in the cab", "lit", 0.2),
        ],
        []);

    private static Unit Unit(string symbol) => UnitTable.TryGet(symbol, out var unit) ? unit : throw new ArgumentException(symbol);
}
