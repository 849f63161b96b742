using System.Collections.Concurrent;
using System.Linq.Expressions;
using System.Reflection;
using System.Text;
using NRules.Extensibility;

namespace DiagRules.Rules;

/// <summary>
/// Makes delegates for the rule network without compiling expressions: nearly all of ours are a call of one method on one constant, which a
/// delegate can be bound to directly. Compiling expressions is otherwise most of the time it takes to compile a pack. Thread-safe.
/// </summary>
internal sealed class DirectExpressionCompiler : IExpressionCompiler
{
    // Actions hold no constants, so all rules of one shape share one delegate; there are a handful of shapes.
    private static readonly ConcurrentDictionary<(Type, string), Delegate> ByShape = new();

    public TDelegate Compile<TDelegate>(Expression<TDelegate> expression)
        where TDelegate : Delegate =>
        (TDelegate)(BindTest(typeof(TDelegate), expression) ?? CompileShape(expression));

    /// <summary><c>fact => { x = (T)fact.Object; constant.Method(x) }</c> with a boolean result; <see langword="null"/> for anything else.</summary>
    private static Delegate? BindTest(Type type, LambdaExpression lambda)
    {
        if (lambda is not { Parameters: [var fact], Body: BlockExpression { Expressions: [BinaryExpression { NodeType: ExpressionType.Assign } assign, MethodCallExpression call] } }
            || assign.Right is not UnaryExpression { NodeType: ExpressionType.Convert, Operand: MemberExpression { Member: PropertyInfo { GetMethod: { } getter } } read }
            || read.Expression != fact
            || call is not { Object: ConstantExpression { Value: { } target }, Arguments: [var argument] }
            || argument != assign.Left
            || call.Type != typeof(bool))
        {
            return null;
        }

        var test = typeof(FactTest<,>).MakeGenericType(fact.Type, assign.Left.Type);
        var bound = Activator.CreateInstance(
            test,
            getter.CreateDelegate(typeof(Func<,>).MakeGenericType(fact.Type, typeof(object))),
            call.Method.CreateDelegate(typeof(Func<,>).MakeGenericType(assign.Left.Type, typeof(bool)), target));
        return test.GetMethod(nameof(FactTest<object, object>.Holds))!.CreateDelegate(type, bound);
    }

    private static Delegate CompileShape(LambdaExpression lambda)
    {
        var shape = new Shape(lambda);
        return shape.HasConstants || lambda.Body is not BlockExpression
            ? lambda.Compile()
            : ByShape.GetOrAdd((lambda.Type, shape.Text), _ => lambda.Compile());
    }

    private sealed class FactTest<TFact, T>(Func<TFact, object> read, Func<T, bool> test)
    {
        public bool Holds(TFact fact) => test((T)read(fact));
    }

    /// <summary>What a lambda does, part by part with every type in full: the text of an expression alone leaves out whose method it calls.</summary>
    private sealed class Shape : ExpressionVisitor
    {
        private readonly StringBuilder _text = new();

        public Shape(Expression expression) => Visit(expression);

        public bool HasConstants { get; private set; }

        public string Text => _text.ToString();

        public override Expression? Visit(Expression? node)
        {
            if (node is not null)
            {
                var method = (node as MethodCallExpression)?.Method;
                _text.Append(node).Append(':').Append(node.Type.FullName).Append(':').Append(method?.DeclaringType?.FullName).Append(';');
            }

            return base.Visit(node);
        }

        protected override Expression VisitConstant(ConstantExpression node)
        {
            HasConstants = true;
            return node;
        }
    }
}
