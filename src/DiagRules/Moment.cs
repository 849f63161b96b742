using DiagRules.Confidence;
using DiagRules.Facts;
using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Reasoning.Inference;
using DiagRules.Rules;

namespace DiagRules;

/// <summary>Everything a session knows and believes at one moment; what a diagnosis is written from.</summary>
internal sealed class Moment
{
    public required PackIndex Index { get; init; }

    public required EngineOptions EngineOptions { get; init; }

    public required SessionOptions Options { get; init; }

    public required CauseNetwork Network { get; init; }

    public required Complaint? Complaint { get; init; }

    public required IReadOnlyList<Observation> Record { get; init; }

    public required ObservedState Observed { get; init; }

    public required KnownState Known { get; init; }

    public required Views Views { get; init; }

    /// <summary>Advice, hazards and deferrals that hold.</summary>
    public required IReadOnlyList<RuleLine> Outcomes { get; init; }

    public required CauseModel Model { get; init; }

    public required CauseEvidence Evidence { get; init; }

    public required Weighing Weighing { get; init; }

    public Pack Pack => Index.Pack;

    /// <summary>Confidence of the cause at a position of <see cref="CauseNetwork.Causes"/>.</summary>
    public double ConfidenceAt(int position) => Weighing.Confidences[position];

    /// <summary>What an expense and minutes are worth together.</summary>
    public double CostOf(WorkStep step) => step.Minutes + Pack.MinutesWorth(step.Cost, EngineOptions.LabourPerHour);
}
