using DiagRules.Model;
using DiagRules.Model.Problems;
using DiagRules.Packs.Text;

namespace DiagRules.Packs.Observations;

/// <summary>
/// Reads what somebody typed or an import delivered - an id and a value as text - against a loaded pack. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// What an id takes:
/// <list type="bullet">
/// <item>a measured reading: a quantity in any unit of its dimension (<c>0.2 V</c>, <c>200 mV</c>; a bare number for
/// <c>unit: number</c>), <c>over-range</c> or <c>under-range</c>;</item>
/// <item>a finding: a grade, several left open (<c>clicks-only or silent</c>), or a stretch of them (<c>slow or worse</c>);</item>
/// <item>a cause or precondition: <c>present</c> or <c>absent</c>;</item>
/// <item>each of these: <c>cannot-tell</c>;</item>
/// <item>a repair, or a precondition that says what restores it: what came of trying it, <c>no-change</c>, <c>for-a-while</c> or
/// <c>cured</c>.</item>
/// </list>
/// Numbers are written with a decimal point whatever the culture of the host. Problems carry the pack's id and no file; the column
/// counts within the value.
/// </remarks>
public sealed class ObservationReader
{
    private readonly string _pack;
    private readonly ObservationBinder _binder;

    /// <summary>Makes a reader for one pack.</summary>
    /// <param name="pack">The pack.</param>
    public ObservationReader(Pack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        _pack = pack.Id;
        _binder = new ObservationBinder(pack.Find, () => pack.Entries.Select(entry => entry.Id));
    }

    /// <summary>Reads one observation.</summary>
    /// <param name="id">Id of the reading, finding, cause, precondition or repair.</param>
    /// <param name="value">The value; spaces around it do not count.</param>
    /// <returns>
    /// The observation without <c>by</c>, <c>trust</c> and the like, which the caller knows, or the problem: DR2004 (no such id),
    /// DR2007 (nothing that is observed), DR2008 (no such grade), DR3101, DR3103 and DR3104 (number or unit not readable), DR6002 (the
    /// value does not fit, or is not plausible; in the latter case the observation comes with it).
    /// </returns>
    public ObservationResult Read(string id, string value)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(value);
        var problems = new ProblemSink();
        var place = new SourcePlace(_pack, "", 0, 1);
        var observation = _binder.Read(new PlacedText(id.Trim(), place), new PlacedText(value.Trim(), place), problems);
        return new ObservationResult(observation, problems.InOrder() is [var first, ..] ? first : null);
    }
}
