using DiagRules.Model;
using DiagRules.Model.Conditions;
using DiagRules.Model.Problems;
using DiagRules.Model.Quantities;
using DiagRules.Packs.Binding;
using DiagRules.Packs.Tree;

namespace DiagRules.Packs.Checks;

/// <summary>Quantities far from what occurs on vehicles: most often a slipped prefix or decimal point.</summary>
/// <remarks>The ranges are common practice of the trade, taken wide; they are no standard.</remarks>
internal sealed class MagnitudeWarnings(CheckScope scope)
{
    private static readonly Dictionary<Dimension, (double Least, double Most, string Text)> Usual = Build(
        ("V", 1e-4, 2e3, "0.1 mV .. 2000 V"),
        ("A", 1e-6, 5e3, "1 uA .. 5000 A"),
        ("ohm", 1e-5, 1e10, "0.01 mohm .. 10 000 Mohm"),
        ("W", 1e-3, 1e6, "1 mW .. 1000 kW"),
        ("bar", 10, 2e8, "0.1 mbar .. 2000 bar"),
        ("N.m", 1e-2, 1e4, "0.01 N.m .. 10 000 N.m"),
        ("N", 1e-2, 1e7, "0.01 N .. 10 000 kN"),
        ("m", 1e-6, 1e6, "0.001 mm .. 1000 km"),
        ("kg", 1e-4, 1e5, "0.1 g .. 100 t"),
        ("L", 1e-7, 1e2, "0.1 mL .. 100 m3"),
        ("L/min", 1e-10, 1, "0.01 mL/min .. 60 000 L/min"),
        ("rpm", 1e-3, 1e4, "0.01 rpm .. 100 000 rpm"));

    public void Run()
    {
        foreach (var (declared, parameter) in scope.Of<Parameter>(Section.Parameters))
        {
            Check(declared, parameter.Value, CheckScope.ValueOf(declared, "value"));
            foreach (var (key, value) in declared.Body.Find("for")?.Value is MapNode map ? map.Pairs : [])
            {
                Check(declared, parameter.On(key.Value), value.Place);
            }
        }

        foreach (var (declared, reading) in scope.Of<Reading>(Section.Readings).Where(reading => reading.Entry.Plausible is not null))
        {
            Check(declared, reading.Plausible!.Value.Least, CheckScope.ValueOf(declared, "plausible"));
            Check(declared, reading.Plausible!.Value.Most, CheckScope.ValueOf(declared, "plausible"));
        }

        foreach (var use in ConditionUse.In(scope))
        {
            foreach (var literal in ConditionUse.Comparisons(use.Condition).SelectMany(comparison => Literals(comparison.Left).Concat(Literals(comparison.Right))))
            {
                Check(use.Owner, literal);
            }
        }

        foreach (var (declared, finding) in scope.Of<Finding>(Section.Findings))
        {
            foreach (var literal in finding.Bands?.Limits.SelectMany(Literals) ?? [])
            {
                Check(declared, literal);
            }
        }
    }

    private void Check(Declared declared, LiteralTerm literal)
    {
        if (UnitTable.TryGet(literal.Type.Unit, out var unit))
        {
            Check(declared, Quantity.FromSi(literal.Si, unit), literal.Place);
        }
    }

    private void Check(Declared declared, Quantity quantity, SourcePlace place)
    {
        if (quantity.Unit.IsPoint || quantity.Si == 0 || !Usual.TryGetValue(quantity.Unit.Dimension, out var usual))
        {
            return;
        }

        var size = Math.Abs(quantity.Si);
        if (size < usual.Least || size > usual.Most)
        {
            scope.Warn(
                ProblemCatalogue.MagnitudeLooksWrong,
                place,
                $"'{quantity}' of '{declared.Id}' is far from what is usual ({usual.Text}); look at the unit and the decimal point.",
                declared);
        }
    }

    private static IEnumerable<LiteralTerm> Literals(Term term) => term switch
    {
        LiteralTerm literal => [literal],
        ArithmeticTerm arithmetic => Literals(arithmetic.Left).Concat(Literals(arithmetic.Right)),
        NegatedTerm negated => Literals(negated.Operand),
        _ => [],
    };

    private static Dictionary<Dimension, (double Least, double Most, string Text)> Build(params (string Unit, double Least, double Most, string Text)[] rows) =>
        rows.ToDictionary(row => UnitTable.TryGet(row.Unit, out var unit) ? unit.Dimension : Dimension.None, row => (row.Least, row.Most, row.Text));
}
