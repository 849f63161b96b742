using DiagRules.Model.Problems;

namespace DiagRules.Model.Conditions;

/// <summary>A number in a condition: what stands on either side of a comparison, or behind <c>from:</c>. Immutable.</summary>
/// <param name="Type">Dimension, and whether it is a point on the temperature scale; checked when the pack was loaded.</param>
/// <param name="Place">Where it is written.</param>
public abstract record Term(TermType Type, SourcePlace Place)
{
    /// <summary>How many parts it has with derived readings written out as what they derive from; loading refuses terms that grow too large.</summary>
    public virtual int Size => 1;

    /// <summary>How many of those parts lie within each other at most.</summary>
    public virtual int Depth => 1;

    /// <summary>Its value in SI and its slope against one measured reading.</summary>
    /// <param name="facts">What is known.</param>
    /// <param name="seed">The measured reading whose slope is wanted, or -1 for the value alone.</param>
    /// <returns>NaN as value where something needed is unknown or does not compute.</returns>
    public abstract Slope Evaluate(IFacts facts, int seed = -1);

    /// <summary>Adds every measured reading this depends on, through derived ones too, each once.</summary>
    internal abstract void CollectBases(SortedSet<int> bases);
}

/// <summary>A literal.</summary>
/// <param name="Si">Value in SI.</param>
/// <param name="Type">Dimension.</param>
/// <param name="Place">Where it is written.</param>
public sealed record LiteralTerm(double Si, TermType Type, SourcePlace Place) : Term(Type, Place)
{
    /// <inheritdoc/>
    public override Slope Evaluate(IFacts facts, int seed = -1) => new(Si, 0);

    internal override void CollectBases(SortedSet<int> bases)
    {
    }
}

/// <summary>A parameter of the pack.</summary>
/// <param name="Parameter">Index of the parameter.</param>
/// <param name="Type">Dimension.</param>
/// <param name="Place">Where it is written.</param>
public sealed record ParameterTerm(int Parameter, TermType Type, SourcePlace Place) : Term(Type, Place)
{
    /// <inheritdoc/>
    public override Slope Evaluate(IFacts facts, int seed = -1)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return new(facts.Parameter(Parameter), 0);
    }

    internal override void CollectBases(SortedSet<int> bases)
    {
    }
}

/// <summary>A reading.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Type">Dimension.</param>
/// <param name="Place">Where it is written.</param>
public sealed record ReadingTerm(Reading Reading, TermType Type, SourcePlace Place) : Term(Type, Place)
{
    /// <inheritdoc/>
    public override int Size => 1 + (Reading.From?.Size ?? 0);

    /// <inheritdoc/>
    public override int Depth => 1 + (Reading.From?.Depth ?? 0);

    /// <inheritdoc/>
    public override Slope Evaluate(IFacts facts, int seed = -1)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var value = facts.Reading(Reading.Index);
        if (seed < 0 || !double.IsFinite(value))
        {
            return new(value, 0);
        }

        return Reading.From is null
            ? new(value, Reading.Index == seed ? 1 : 0)
            : new(value, Reading.From.Evaluate(facts, seed).Rate);
    }

    internal override void CollectBases(SortedSet<int> bases)
    {
        if (Reading.From is null)
        {
            bases.Add(Reading.Index);
        }
        else
        {
            Reading.From.CollectBases(bases);
        }
    }
}

/// <summary>A sum or difference, product or quotient of two terms.</summary>
/// <param name="Operator">One of <c>+ - * /</c>.</param>
/// <param name="Left">Left side.</param>
/// <param name="Right">Right side.</param>
/// <param name="Type">Dimension of the result.</param>
/// <param name="Place">Where it is written.</param>
public sealed record ArithmeticTerm(char Operator, Term Left, Term Right, TermType Type, SourcePlace Place) : Term(Type, Place)
{
    /// <inheritdoc/>
    public override int Size { get; } = 1 + Left.Size + Right.Size;

    /// <inheritdoc/>
    public override int Depth { get; } = 1 + Math.Max(Left.Depth, Right.Depth);

    /// <inheritdoc/>
    public override Slope Evaluate(IFacts facts, int seed = -1)
    {
        var left = Left.Evaluate(facts, seed);
        var right = Right.Evaluate(facts, seed);
        var result = Operator switch
        {
            '+' => new Slope(left.Value + right.Value, left.Rate + right.Rate),
            '-' => new Slope(left.Value - right.Value, left.Rate - right.Rate),
            '*' => new Slope(left.Value * right.Value, (left.Rate * right.Value) + (left.Value * right.Rate)),
            _ => new Slope(left.Value / right.Value, (left.Rate - (left.Value / right.Value * right.Rate)) / right.Value),
        };

        // A reading beyond its meter's range is beyond every limit, but no arithmetic can be done with it; nor with x / 0.
        return double.IsFinite(left.Value) && double.IsFinite(right.Value) && double.IsFinite(result.Value) ? result : Slope.Unknown;
    }

    internal override void CollectBases(SortedSet<int> bases)
    {
        Left.CollectBases(bases);
        Right.CollectBases(bases);
    }
}

/// <summary>A term with the sign turned.</summary>
/// <param name="Operand">The term.</param>
/// <param name="Type">Dimension.</param>
/// <param name="Place">Where it is written.</param>
public sealed record NegatedTerm(Term Operand, TermType Type, SourcePlace Place) : Term(Type, Place)
{
    /// <inheritdoc/>
    public override int Size { get; } = 1 + Operand.Size;

    /// <inheritdoc/>
    public override int Depth { get; } = 1 + Operand.Depth;

    /// <inheritdoc/>
    public override Slope Evaluate(IFacts facts, int seed = -1)
    {
        var operand = Operand.Evaluate(facts, seed);
        return double.IsFinite(operand.Value) ? new(-operand.Value, -operand.Rate) : Slope.Unknown;
    }

    internal override void CollectBases(SortedSet<int> bases) => Operand.CollectBases(bases);
}
