using System.Collections.Immutable;
using DiagRules.Model.Problems;

namespace DiagRules.Model.Conditions;

/// <summary>
/// A condition of a pack, parsed and checked. Immutable and thread-safe; evaluation allocates nothing.
/// </summary>
/// <param name="Text">The condition, or the part of it this node stands for, as the pack writes it.</param>
/// <param name="Place">Where it is written.</param>
public abstract record Condition(string Text, SourcePlace Place)
{
    /// <summary>Its truth (strong Kleene logic).</summary>
    public abstract Truth Evaluate(IFacts facts);
}

/// <summary>True when every part is, false as soon as one is false.</summary>
/// <param name="Parts">Two or more parts.</param>
/// <param name="Text">Text of this part.</param>
/// <param name="Place">Where it is written.</param>
public sealed record AllOf(ImmutableArray<Condition> Parts, string Text, SourcePlace Place) : Condition(Text, Place)
{
    /// <inheritdoc/>
    public override Truth Evaluate(IFacts facts)
    {
        var least = Truth.True;
        foreach (var part in Parts)
        {
            var truth = part.Evaluate(facts);
            if (truth == Truth.False)
            {
                return Truth.False;
            }

            least = truth < least ? truth : least;
        }

        return least;
    }
}

/// <summary>True as soon as one part is, false when all are false.</summary>
/// <param name="Parts">Two or more parts.</param>
/// <param name="Text">Text of this part.</param>
/// <param name="Place">Where it is written.</param>
public sealed record AnyOf(ImmutableArray<Condition> Parts, string Text, SourcePlace Place) : Condition(Text, Place)
{
    /// <inheritdoc/>
    public override Truth Evaluate(IFacts facts)
    {
        var most = Truth.False;
        foreach (var part in Parts)
        {
            var truth = part.Evaluate(facts);
            if (truth == Truth.True)
            {
                return Truth.True;
            }

            most = truth > most ? truth : most;
        }

        return most;
    }
}

/// <summary>The opposite; unknown stays unknown.</summary>
/// <param name="Part">What is denied.</param>
/// <param name="Text">Text of this part.</param>
/// <param name="Place">Where it is written.</param>
public sealed record Negation(Condition Part, string Text, SourcePlace Place) : Condition(Text, Place)
{
    /// <inheritdoc/>
    public override Truth Evaluate(IFacts facts) => (Truth)(-(sbyte)Part.Evaluate(facts));
}

/// <summary><c>finding is grade or grade</c>, <c>finding is grade or worse</c>; causes have the grades absent and present.</summary>
/// <param name="Node">Node of the finding or cause.</param>
/// <param name="Grades">The grades for which it holds; for <c>is not</c> the others.</param>
/// <param name="Text">Text of this part.</param>
/// <param name="Place">Where it is written.</param>
public sealed record GradeTest(int Node, GradeSet Grades, string Text, SourcePlace Place) : Condition(Text, Place)
{
    /// <inheritdoc/>
    public override Truth Evaluate(IFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var open = facts.Grades(Node);
        return open.IsEmpty ? Truth.Unknown
            : open.IsSubsetOf(Grades) ? Truth.True
            : open.Overlaps(Grades) ? Truth.Unknown
            : Truth.False;
    }
}

/// <summary><c>known id</c> or <c>unknown id</c> of a finding or cause. Always certain.</summary>
/// <param name="Node">Node of the finding or cause.</param>
/// <param name="WantsKnown">Whether it asks for <c>known</c>.</param>
/// <param name="Text">Text of this part.</param>
/// <param name="Place">Where it is written.</param>
public sealed record KnownGrade(int Node, bool WantsKnown, string Text, SourcePlace Place) : Condition(Text, Place)
{
    /// <inheritdoc/>
    public override Truth Evaluate(IFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return facts.Grades(Node).IsEmpty != WantsKnown ? Truth.True : Truth.False;
    }
}

/// <summary><c>known id</c> or <c>unknown id</c> of a reading. Always certain.</summary>
/// <param name="Reading">Index of the reading.</param>
/// <param name="WantsKnown">Whether it asks for <c>known</c>.</param>
/// <param name="Text">Text of this part.</param>
/// <param name="Place">Where it is written.</param>
public sealed record KnownReading(int Reading, bool WantsKnown, string Text, SourcePlace Place) : Condition(Text, Place)
{
    /// <inheritdoc/>
    public override Truth Evaluate(IFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return double.IsNaN(facts.Reading(Reading)) != WantsKnown ? Truth.True : Truth.False;
    }
}

/// <summary>A condition that a set without members leaves behind, or that is always the same for another plain reason.</summary>
/// <param name="Value">Its truth.</param>
/// <param name="Text">Text of this part.</param>
/// <param name="Place">Where it is written.</param>
public sealed record Constant(Truth Value, string Text, SourcePlace Place) : Condition(Text, Place)
{
    /// <inheritdoc/>
    public override Truth Evaluate(IFacts facts) => Value;
}
