using DiagRules.Confidence;
using DiagRules.Facts;
using DiagRules.Model;
using DiagRules.Model.Cases;
using DiagRules.Packs.Observations;
using DiagRules.Rules;
using DiagRules.Saving;

namespace DiagRules;

/// <summary>
/// A pack compiled for one chassis: its rules, its network, its plans. Compiling is the one expensive step; share the engine between
/// all jobs. Immutable and thread-safe.
/// </summary>
/// <example>
/// <code>
/// var engine = DiagnosisEngine.Compile(new PackLoader().Load("packs/corrie-ld4-tail-lift").Require());
/// var session = engine.Start(new SessionOptions { Complaint = "will-not-lift" });
/// session.Observe("power-unit", "clicks-once");
/// var diagnosis = session.Diagnose();
/// </code>
/// </example>
public sealed class DiagnosisEngine
{
    private readonly ObservationReader _observations;

    private DiagnosisEngine(Pack pack, string? chassis, EngineOptions options)
    {
        Pack = pack;
        Chassis = chassis;
        Options = options;
        _observations = new ObservationReader(pack);
        Index = new PackIndex(pack, chassis);
        Book = new RuleBook(pack, chassis);
        Network = new CauseNetwork(pack, chassis);
    }

    /// <summary>The pack.</summary>
    public Pack Pack { get; }

    /// <summary>Chassis code it is compiled for, or <see langword="null"/> when the pack makes no difference.</summary>
    public string? Chassis { get; }

    internal EngineOptions Options { get; }

    internal PackIndex Index { get; }

    internal RuleBook Book { get; }

    internal CauseNetwork Network { get; }

    /// <summary>Compiles a pack.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="options">Options; the defaults when <see langword="null"/>.</param>
    /// <exception cref="EngineException">The pack does not know the chassis, or has nothing to weigh.</exception>
    public static DiagnosisEngine Compile(Pack pack, EngineOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(pack);
        options ??= new EngineOptions();
        var chassis = options.Chassis ?? pack.Chassis.FirstOrDefault();
        if (options.Chassis is { } asked && !pack.Chassis.Contains(asked, StringComparer.Ordinal))
        {
            var known = pack.Chassis.IsEmpty ? "it makes no difference between chassis" : $"it knows {string.Join(", ", pack.Chassis)}";
            throw new EngineException($"Pack '{pack.Id}' does not know chassis '{asked}'; {known}.");
        }

        if (!pack.Causes.Any(cause => cause.IsOn(chassis) && (cause.Share ?? cause.Probability) > 0))
        {
            throw new EngineException($"Pack '{pack.Id}' has no cause with a share or probability above 0 on chassis '{chassis}'.");
        }

        return new DiagnosisEngine(pack, chassis, options);
    }

    /// <summary>Begins a job.</summary>
    /// <param name="options">Complaint, who works on it, tools at hand; the defaults when <see langword="null"/>.</param>
    /// <exception cref="EngineException">The pack does not know the complaint.</exception>
    public DiagnosisSession Start(SessionOptions? options = null) => new(this, options ?? new SessionOptions(), []);

    /// <summary>Begins a job with what a recorded case observed. What was seen on opening is left out, since it answers the case.</summary>
    /// <param name="recorded">The case; its own chassis must be that of the engine, or none.</param>
    /// <exception cref="EngineException">An observation of the case does not fit the pack.</exception>
    public DiagnosisSession StartFrom(RecordedCase recorded)
    {
        ArgumentNullException.ThrowIfNull(recorded);
        var session = Start(new SessionOptions { Complaint = recorded.Complaint });
        foreach (var observation in recorded.Observations)
        {
            var result = session.Observe(observation);
            if (!result.IsAccepted)
            {
                throw new EngineException($"Case '{recorded.Id}': {result.Problem!.Message}");
            }
        }

        return session;
    }

    /// <summary>Goes on with a job that <see cref="DiagnosisSession.Save"/> wrote.</summary>
    /// <param name="json">The saved document.</param>
    /// <param name="options">Who works on it now; the complaint is that of the saved job.</param>
    /// <exception cref="SessionFormatException">
    /// The document cannot be read, or belongs to another pack, version or chassis; the message says which.
    /// </exception>
    public DiagnosisSession Resume(string json, SessionOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(json);
        var saved = SavedSession.Read(json, this);
        options ??= new SessionOptions();
        return new DiagnosisSession(this, options.With(saved.Complaint), saved.Observations);
    }

    internal ObservationResult ReadObservation(string id, string value) => _observations.Read(id, value);
}
