using DiagRules.Model.Conditions;
using NRules.RuleModel;

namespace DiagRules.Rules;

/// <summary>What all supports of a finding or cause agree on. A fact of the rule network; one type per world keeps alpha tests few.</summary>
internal abstract class Settled(int node, GradeSet grades)
{
    private static readonly object Key = new();

    public int Node { get; } = node;

    public GradeSet Grades { get; } = grades;

    /// <summary>Keeps the settled state of a group of supports up to date; supports that disagree settle nothing.</summary>
    protected static void Follow<T>(IContext context, IGrouping<int, Support> supports, Func<int, GradeSet, T> make)
        where T : Settled
    {
        var agreed = new GradeSet(byte.MaxValue);
        foreach (var support in supports)
        {
            agreed &= support.Grades;
        }

        var present = (T?)context.GetLinked(Key);
        if (present is not null && present.Grades == agreed)
        {
            return;
        }

        if (present is not null)
        {
            context.RetractLinked(Key, present);
        }

        if (!agreed.IsEmpty)
        {
            context.InsertLinked(Key, make(supports.Key, agreed));
        }
    }
}

/// <summary>Settled where doubtful observations are unknown.</summary>
internal sealed class StrictlySettled(int node, GradeSet grades) : Settled(node, grades)
{
    public static void Follow(IContext context, IGrouping<int, Support> supports) =>
        Follow(context, supports, (node, grades) => new StrictlySettled(node, grades));
}

/// <summary>Settled where doubtful observations are taken at their word.</summary>
internal sealed class LenientlySettled(int node, GradeSet grades) : Settled(node, grades)
{
    public static void Follow(IContext context, IGrouping<int, Support> supports) =>
        Follow(context, supports, (node, grades) => new LenientlySettled(node, grades));
}
