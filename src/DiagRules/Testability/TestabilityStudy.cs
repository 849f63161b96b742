using System.Collections.Immutable;
using DiagRules.Reasoning.Testability;
using DiagRules.Testability.Presenting;

namespace DiagRules.Testability;

/// <summary>
/// What the checks of a pack can find and tell apart, before any job: the fault-by-check matrix and its figures of merit (MIL-STD-2165, 1985;
/// IEEE Std 1522-2004). Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Each cause is taken to be there alone, every other one absent, and each check to be done by itself with nothing known. Whether a check detects the cause is
/// yes or no by <see cref="TestabilityOptions.Detection"/>, so two causes that make the same check show different things look alike here;
/// <see cref="ToldApartByGrade"/> names groups that the grades still part. Whoever can do a check and what it costs does not count.
/// </remarks>
public sealed class TestabilityStudy
{
    private readonly double[,] _likelihoods;
    private readonly bool[,] _detects;

    internal TestabilityStudy(double[,] likelihoods, bool[,] detects, TestabilityReport report)
    {
        _likelihoods = likelihoods;
        _detects = detects;
        Report = report;
    }

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

    /// <summary>How surely a check must show something abnormal to count.</summary>
    public double Detection { get; init; }

    /// <summary>Rows of the matrix: causes and preconditions.</summary>
    public required ImmutableArray<StudiedCause> Causes { get; init; }

    /// <summary>Columns of the matrix.</summary>
    public required ImmutableArray<StudiedCheck> Checks { get; init; }

    /// <summary>Figures of merit; its indices are those of <see cref="Causes"/> and <see cref="Checks"/>.</summary>
    public TestabilityReport Report { get; }

    /// <summary>
    /// For each ambiguity group of the report the parts that the grades tell apart, by index of the cause; one part where they do not.
    /// </summary>
    public required ImmutableArray<ImmutableArray<ImmutableArray<int>>> ToldApartByGrade { get; init; }

    /// <summary>Whether a check detects a cause.</summary>
    /// <param name="cause">Index in <see cref="Causes"/>.</param>
    /// <param name="check">Index in <see cref="Checks"/>.</param>
    public bool Detects(int cause, int check) => _detects[cause, check];

    /// <summary>
    /// Probability 0..1 that some finding the check decides comes out abnormal under the cause: that of the finding of which this is most likely.
    /// </summary>
    /// <param name="cause">Index in <see cref="Causes"/>.</param>
    /// <param name="check">Index in <see cref="Checks"/>.</param>
    public double Likelihood(int cause, int check) => _likelihoods[cause, check];

    /// <summary>Studies a compiled pack.</summary>
    /// <param name="engine">The engine: pack and chassis.</param>
    /// <param name="options">What counts; the defaults when <see langword="null"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An option is out of its range.</exception>
    /// <exception cref="EngineException">Weighing would go beyond the engine's budget.</exception>
    public static TestabilityStudy Of(DiagnosisEngine engine, TestabilityOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(engine);
        options ??= new TestabilityOptions();
        options.ThrowIfOutOfRange();
        try
        {
            return new Study(engine, options).Make();
        }
        catch (Reasoning.Inference.InferenceBudgetException exception)
        {
            throw new EngineException(exception.Message, exception);
        }
    }

    /// <summary>The study as plain text.</summary>
    /// <param name="width">Columns a line may fill, at least 40; the matrix takes what it needs.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="width"/> is below 40.</exception>
    public string ToText(int width = 80)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 40);
        return new StudyText(this, width).Write();
    }

    /// <summary>The study as one JSON document; keys are kebab-case, causes and checks by id.</summary>
    public string ToJson() => StudyJson.Write(this);

    /// <summary>The study as one HTML document to print, with a picture of the matrix.</summary>
    public string ToHtml() => new StudyHtml(this).Document();
}
