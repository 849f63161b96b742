using DiagRules.Model.Calculations;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Text;
using DiagRules.Packs.Values;

namespace DiagRules.Packs.Calculations;

/// <summary>
/// Reads a call of a calculation as somebody typed it: a name, and arguments as <c>supply=12 V</c>, in any order. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Where several libraries have a calculation of that name, the first in order of names counts, as in packs, and of one library the
/// newest version. Numbers and units are written as in packs. Problems carry no file; their place counts for nothing.
/// </remarks>
public sealed class CalculationCallReader
{
    private readonly List<CalculationLibrary> _libraries;

    /// <summary>Makes a reader.</summary>
    /// <param name="libraries">The libraries there are.</param>
    public CalculationCallReader(IEnumerable<CalculationLibrary> libraries)
    {
        ArgumentNullException.ThrowIfNull(libraries);
        _libraries = [.. libraries.OrderBy(library => library.Name, StringComparer.Ordinal).ThenByDescending(library => library.Version)];
    }

    /// <summary>Reads one call.</summary>
    /// <param name="name">Name of the calculation.</param>
    /// <param name="arguments">Arguments, each <c>name=value</c>.</param>
    /// <returns>
    /// The call, or all problems: DR3009 (no such calculation, or wrong arguments), DR3101 to DR3105 (a number or unit that cannot be
    /// read or does not fit).
    /// </returns>
    public CalculationCallResult Read(string name, IEnumerable<string> arguments)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(arguments);
        var library = _libraries.Find(candidate => candidate.Find(name) is not null);
        if (library?.Find(name) is not { } calculation)
        {
            var known = _libraries.SelectMany(candidate => candidate.Calculations).Select(candidate => candidate.Description.Name).Distinct();
            return new(null, [Wrong($"No calculation '{name}' in {Wording.And(_libraries.Select(one => $"{one.Name} {one.Version}"))}.{Spelling.DidYouMean(name, known)}")]);
        }

        var problems = new List<Problem>();
        var given = Given(calculation.Description, arguments, problems);
        if (problems.Count == 0)
        {
            problems.AddRange(Missing(calculation.Description, given));
        }

        return problems.Count > 0 ? new(null, problems) : new(new CalculationCall(library, calculation, [.. Filled(calculation.Description, given)]), []);
    }

    private static Dictionary<string, Quantity> Given(CalculationDescription description, IEnumerable<string> arguments, List<Problem> problems)
    {
        var given = new Dictionary<string, Quantity>(StringComparer.Ordinal);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var argument in arguments)
        {
            var parts = argument.Split('=', 2, StringSplitOptions.TrimEntries);
            var parameter = description.Parameters.FirstOrDefault(candidate => candidate.Name == parts[0]);
            if (Fault(description, parts, parameter, seen) is { } fault)
            {
                problems.Add(Wrong(fault));
            }
            else if (Value(parameter!, parts[1], problems) is { } value)
            {
                given[parts[0]] = value;
            }
        }

        return given;
    }

    private static string? Fault(CalculationDescription description, string[] parts, CalculationParameter? parameter, HashSet<string> seen)
    {
        if (parts.Length < 2)
        {
            return $"'{parts[0]}' names no parameter; write name=value: {description.Signature}.";
        }

        if (parameter is null)
        {
            var near = Spelling.DidYouMean(parts[0], description.Parameters.Select(known => known.Name));
            return $"'{description.Name}' takes no '{parts[0]}': {description.Signature}.{near}";
        }

        return seen.Add(parts[0]) ? null : $"'{parts[0]}' is given twice: {description.Signature}.";
    }

    private static Quantity? Value(CalculationParameter parameter, string text, List<Problem> problems)
    {
        var sink = new ProblemSink();
        var value = QuantityReader.Read(new PlacedText(text, default), parameter.Unit, sink);
        problems.AddRange(sink.InOrder().Select(problem => problem with { Message = $"{parameter.Name}: {problem.Message}" }));
        if (value is not { } quantity || double.IsFinite(quantity.Si))
        {
            return value;
        }

        problems.Add(new Problem(ProblemCatalogue.NumberNotReadable, $"{parameter.Name}: '{text}' is too large to compute with.", default));
        return null;
    }

    private static IEnumerable<Problem> Missing(CalculationDescription description, Dictionary<string, Quantity> given) =>
        from parameter in description.Parameters
        where parameter.Default is null && !given.ContainsKey(parameter.Name)
        select Wrong($"'{description.Name}' is not given its '{parameter.Name}' ({parameter.Meaning}): {description.Signature}.");

    private static IEnumerable<CalculationArgument> Filled(CalculationDescription description, Dictionary<string, Quantity> given) =>
        description.Parameters.Select(parameter => given.TryGetValue(parameter.Name, out var value)
            ? new CalculationArgument(parameter, value, IsLeftOut: false)
            : new CalculationArgument(parameter, Quantity.FromSi(parameter.Default!.Value, parameter.Unit), IsLeftOut: true));

    private static Problem Wrong(string message) => new(ProblemCatalogue.BadCalculation, message, default);
}
