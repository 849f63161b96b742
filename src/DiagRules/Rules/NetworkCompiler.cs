using System.Linq.Expressions;
using NRules;
using NRules.RuleModel;
using NRules.RuleModel.Builders;

namespace DiagRules.Rules;

/// <summary>Writes branches as rules of NRules. Nothing of NRules is seen outside this folder.</summary>
/// <remarks>
/// Three generic rules do most of the work: free gates conclude, and supports settle in each world. Only a branch that waits for
/// a settled finding needs a rule of its own. Settling comes before everything else; the rest runs in order of <see cref="Strata"/>,
/// since within one priority the network's order is that of insertion and nothing may depend on it.
/// </remarks>
internal static class NetworkCompiler
{
    private const int SettlingFirst = 1;

    public static ISessionFactory Compile(IReadOnlyList<Branch> branches, Strata strata)
    {
        var rules = new List<IRuleDefinition> { FreeGates(), Settling<StrictlySettled>(), Settling<LenientlySettled>() };
        rules.AddRange(branches.Where(branch => branch.Literals.Count > 0).Select(branch => Guarded(branch, strata.LevelOf(branch))));
        return new RuleCompiler { ExpressionCompiler = new DirectExpressionCompiler() }.Compile(rules);
    }

    private static IRuleDefinition FreeGates()
    {
        var builder = new RuleBuilder();
        builder.Name("free gates");
        builder.LeftHandSide().Pattern(typeof(FreeGate), "gate");
        Expression<Action<IContext, FreeGate>> conclude = (context, gate) => gate.Conclude(context);
        builder.RightHandSide().Action(conclude);
        return builder.Build();
    }

    private static IRuleDefinition Settling<T>()
        where T : Settled
    {
        var isStrict = typeof(T) == typeof(StrictlySettled);
        var builder = new RuleBuilder();
        builder.Name(isStrict ? "settle strictly" : "settle leniently");
        builder.Priority(SettlingFirst);
        var aggregate = builder.LeftHandSide().Pattern(typeof(IGrouping<int, Support>), "supports").Aggregate();
        Expression<Func<Support, int>> node = support => support.Node;
        Expression<Func<Support, Support>> itself = support => support;
        aggregate.GroupBy(node, itself);
        Expression<Func<Support, bool>> counts = isStrict ? support => support.IsWatched && support.IsStrict : support => support.IsWatched;
        aggregate.Pattern(typeof(Support), "support").Condition(counts);
        Expression<Action<IContext, IGrouping<int, Support>>> follow = isStrict
            ? (context, supports) => StrictlySettled.Follow(context, supports)
            : (context, supports) => LenientlySettled.Follow(context, supports);
        builder.RightHandSide().Action(follow);
        return builder.Build();
    }

    private static IRuleDefinition Guarded(Branch branch, int level)
    {
        var builder = new RuleBuilder();
        builder.Name($"{branch.Line.Source}, way {branch.Index}");
        builder.Priority(-level);
        var left = builder.LeftHandSide();
        left.Pattern(typeof(GuardedGate), "gate").Condition(Test<GuardedGate>("gate", branch, nameof(Branch.Owns)));
        foreach (var literal in branch.Literals)
        {
            var name = $"node{literal.Node}";
            if (literal.WantsUnknown)
            {
                AddTest(left.Not().Pattern(TypeOf(branch), name), branch.Line.World, literal);
            }
            else
            {
                AddTest(left.Exists().Pattern(TypeOf(branch), name), branch.Line.World, literal);
            }
        }

        Expression<Action<IContext, GuardedGate>> conclude = (context, gate) => gate.Conclude(context);
        builder.RightHandSide().Action(conclude);
        return builder.Build();
    }

    private static Type TypeOf(Branch branch) => branch.Line.World == World.Strict ? typeof(StrictlySettled) : typeof(LenientlySettled);

    private static void AddTest(PatternBuilder pattern, World world, Literal literal)
    {
        var name = pattern.Declaration.Name;
        pattern.Condition(world == World.Strict
            ? Test<StrictlySettled>(name, literal, nameof(Literal.Matches))
            : Test<LenientlySettled>(name, literal, nameof(Literal.Matches)));
    }

    // One call of one method on one constant: what the compiler of delegates can bind directly. The parameter carries the pattern's own name.
    private static Expression<Func<T, bool>> Test<T>(string name, object target, string method)
    {
        var parameter = Expression.Parameter(typeof(T), name);
        return Expression.Lambda<Func<T, bool>>(
            Expression.Call(Expression.Constant(target), target.GetType().GetMethod(method)!, parameter),
            parameter);
    }
}
