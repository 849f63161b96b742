using DiagRules.Model;

namespace DiagRules.Facts;

/// <summary>What the session looks up again and again, worked out once per engine. Immutable and thread-safe.</summary>
internal sealed class PackIndex
{
    public PackIndex(Pack pack, string? chassis)
    {
        Pack = pack;
        Chassis = chassis;
        Parameters = [.. pack.Parameters.Select(parameter => parameter.On(chassis).Si)];
        DerivedInOrder = InOrder(pack.Readings);
        Calls = [.. WrittenCalls.Of(pack, chassis)];
        AlteringChecks = pack.Checks
            .Where(check => !check.Alters.IsEmpty)
            .SelectMany(check => check.Gives.Select(given => (given, check)))
            .ToLookup(pair => pair.given, pair => pair.check, StringComparer.Ordinal);
        PatternNode = pack.Findings.FirstOrDefault(finding => finding.Id == Finding.Pattern)?.Node ?? -1;
    }

    public Pack Pack { get; }

    public string? Chassis { get; }

    /// <summary>Values in SI by index.</summary>
    public double[] Parameters { get; }

    /// <summary>Derived readings, each after those it rests on.</summary>
    public Reading[] DerivedInOrder { get; }

    /// <summary>Every call of a calculation in the pack.</summary>
    public WrittenCall[] Calls { get; }

    /// <summary>Checks after whose result some findings may be otherwise, by what they give.</summary>
    public ILookup<string, Check> AlteringChecks { get; }

    /// <summary>Node of the built-in finding <c>pattern</c>, or -1.</summary>
    public int PatternNode { get; }

    private static Reading[] InOrder(IReadOnlyCollection<Reading> readings)
    {
        var ordered = new List<Reading>();
        var seen = new HashSet<Reading>(ReferenceEqualityComparer.Instance);
        foreach (var reading in readings)
        {
            Visit(reading);
        }

        return [.. ordered];

        void Visit(Reading reading)
        {
            if (reading.From is null || !seen.Add(reading))
            {
                return;
            }

            foreach (var other in Dependence.ReadingsIn(reading.From))
            {
                Visit(other);
            }

            ordered.Add(reading);
        }
    }
}
