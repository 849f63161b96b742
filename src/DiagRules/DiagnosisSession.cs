using DiagRules.Confidence;
using DiagRules.Facts;
using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Results;
using DiagRules.Rules;
using DiagRules.Saving;

namespace DiagRules;

/// <summary>One job on one machine: what was observed, and what follows from it. Not thread-safe.</summary>
/// <remarks>
/// Everything is worked out from the record of observations, so their order matters only where the pack says so (the latest of
/// one id counts; checks that alter the machine), and withdrawing one is the same as never having made it.
/// </remarks>
public sealed class DiagnosisSession
{
    private readonly List<Observation> _record = [];
    private readonly RuleRun _rules;
    private readonly Views _views;
    private readonly Complaint? _complaint;
    private Moment? _moment;
    private Diagnosis? _diagnosis;
    private SessionOptions _diagnosedFor = new();

    internal DiagnosisSession(DiagnosisEngine engine, SessionOptions options, IEnumerable<Observation> record)
    {
        Engine = engine;
        Options = options;
        _complaint = ComplaintOf(engine, options.Complaint);
        _rules = new RuleRun(engine.Book);
        _views = new Views(engine.Index);
        _record.AddRange(record);
    }

    /// <summary>The engine it runs on.</summary>
    public DiagnosisEngine Engine { get; }

    /// <summary>How it began. Skill, tools and number of steps may be changed; they count from the next diagnosis on.</summary>
    public SessionOptions Options { get; }

    /// <summary>All observations in the order they became known, set-aside and superseded ones too.</summary>
    public IReadOnlyList<Observation> Record => _record;

    /// <summary>Puts an observation on record. Nothing is lost when it is refused.</summary>
    /// <returns>Whether it is on record and counts, and what is wrong with it.</returns>
    public ObserveResult Observe(Observation observation)
    {
        ArgumentNullException.ThrowIfNull(observation);
        if (ObservationCheck.Refusal(Engine.Pack, Engine.Chassis, observation) is { } refusal)
        {
            return new ObserveResult(IsAccepted: false, IsUsed: false, refusal);
        }

        _record.Add(observation);
        Forget();
        var aside = ObservationCheck.SetAside(Engine.Pack, observation);
        return new ObserveResult(IsAccepted: true, IsUsed: aside is null, aside);
    }

    /// <summary>Puts an observation on record as people write it: <c>fuse-load</c>, <c>0.2 V</c>; <c>pump-sound</c>, <c>clicks-only</c>.</summary>
    /// <param name="id">Id of a reading, finding, cause or tried repair.</param>
    /// <param name="value">Value: number and unit, grade, several grades, <c>cannot-tell</c>, <c>over-range</c>, or the result of a repair.</param>
    /// <param name="by">Who observed it, or <see langword="null"/> for nobody in particular.</param>
    public ObserveResult Observe(string id, string value, Skill? by = null)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(value);
        var reading = Engine.ReadObservation(id, value);
        if (reading.Observation is null)
        {
            return new ObserveResult(IsAccepted: false, IsUsed: false, reading.Problem);
        }

        var result = Observe(reading.Observation with { By = by });
        return result with { Problem = reading.Problem ?? result.Problem };
    }

    /// <summary>Takes the latest observation of an id back, as if it had never been made.</summary>
    /// <returns><see langword="false"/> when there is none.</returns>
    public bool Withdraw(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        var last = _record.FindLastIndex(observation => observation.Id == id);
        return last >= 0 && RemoveAt(last);
    }

    /// <summary>Takes the very latest observation back.</summary>
    /// <returns><see langword="false"/> when nothing is on record.</returns>
    public bool Undo() => _record.Count > 0 && RemoveAt(_record.Count - 1);

    /// <summary>Ranked causes, cautions and next steps from all that is on record. The same record gives the same answer, to the last digit.</summary>
    /// <exception cref="EngineException">Weighing would go beyond the engine's budget.</exception>
    public Diagnosis Diagnose()
    {
        if (_diagnosis is null || !_diagnosedFor.AsksTheSameAs(Options))
        {
            _diagnosis = new DiagnosisWriter(Now()).Write();
            _diagnosedFor = Options.With(Options.Complaint);
        }

        return _diagnosis;
    }

    /// <summary>Why a cause stands where it stands.</summary>
    /// <param name="cause">Id of a cause or precondition.</param>
    /// <exception cref="ArgumentException">There is no such cause on this chassis.</exception>
    public CauseExplanation Explain(string cause)
    {
        ArgumentNullException.ThrowIfNull(cause);
        var entry = Engine.Network.Causes.FirstOrDefault(candidate => candidate.Id == cause)
            ?? throw new ArgumentException($"No cause '{cause}' in pack '{Engine.Pack.Id}'.", nameof(cause));
        return new Explainer(Now()).Explain(entry);
    }

    /// <summary>The job as one JSON document, to be resumed with <see cref="DiagnosisEngine.Resume"/> on the same pack version.</summary>
    public string Save() => SavedSession.Write(this);

    private static Complaint? ComplaintOf(DiagnosisEngine engine, string? id)
    {
        if (id is null)
        {
            return null;
        }

        return engine.Pack.Find<Complaint>(id) is { } complaint && complaint.IsOn(engine.Chassis)
            ? complaint
            : throw new EngineException(
                $"Pack '{engine.Pack.Id}' does not know the complaint '{id}'; it knows {string.Join(", ", engine.Pack.Complaints.Select(known => known.Id))}.");
    }

    private bool RemoveAt(int index)
    {
        _record.RemoveAt(index);
        Forget();
        return true;
    }

    private void Forget()
    {
        _moment = null;
        _diagnosis = null;
    }

    internal Moment Now()
    {
        if (_moment is not null)
        {
            return _moment;
        }

        var observed = ObservedState.Of(Engine.Index, _complaint, _record);
        _views.Read(observed);
        _rules.Settle(observed, _views);
        var known = new KnownState(observed, _rules.Supports, _views);
        var evidence = new EvidenceReader(Engine.Index, Engine.Network, _complaint, observed, known, _views).Read();
        var model = Engine.Network.ModelFor(_complaint);
        return _moment = new Moment
        {
            Index = Engine.Index,
            EngineOptions = Engine.Options,
            Options = Options,
            Network = Engine.Network,
            Complaint = _complaint,
            Record = _record,
            Observed = observed,
            Known = known,
            Views = _views,
            Outcomes = [.. _rules.Outcomes.Select(outcome => outcome.Line).Distinct()],
            Model = model,
            Evidence = evidence,
            Weighing = Weigh(model, evidence),
        };
    }

    private static Reasoning.Inference.Weighing Weigh(Reasoning.Inference.CauseModel model, Reasoning.Inference.CauseEvidence evidence)
    {
        try
        {
            return model.Weigh(evidence);
        }
        catch (Reasoning.Inference.InferenceBudgetException exception)
        {
            throw new EngineException(exception.Message, exception);
        }
    }
}
