using System.Reflection;
using DiagRules.Model.Calculations;
using DiagRules.Model.Problems;

namespace DiagRules.Plugins;

/// <summary>Starts a plugin: loads its assembly and makes its calculations, on a thread that is given up if that never ends.</summary>
internal static class PluginActivator
{
    /// <summary>The plugin, or <see langword="null"/> after reporting.</summary>
    public static LoadedPlugin? Activate(PluginInfo info, TimeSpan limit, List<Problem> problems)
    {
        var start = new Start(info, limit);
        var thread = new Thread(start.Run) { IsBackground = true, Name = $"DiagRules start of plugin '{info}'" };
        thread.UnsafeStart();
        var isDone = thread.Join(limit);
        if (isDone && start.Plugin is { } plugin)
        {
            return plugin;
        }

        problems.Add(PluginProblems.CannotStart(info, isDone ? start.Fault! : $"its start ran longer than {LimitWords.Of(limit)}"));
        start.Context?.Unload();
        return null;
    }

    private sealed class Start(PluginInfo info, TimeSpan limit)
    {
        public LoadedPlugin? Plugin { get; private set; }

        public string? Fault { get; private set; }

        public PluginContext? Context { get; private set; }

        public void Run()
        {
            try
            {
                Plugin = Make();
            }
#pragma warning disable CA1031 // A plugin's start is foreign code; whatever it throws is told and harms nothing else.
            catch (Exception exception)
#pragma warning restore CA1031
            {
                Fault = Explain(exception);
            }
        }

        private LoadedPlugin Make()
        {
            var file = Path.GetFullPath(info.File);
            var context = Context = new PluginContext(file);
            var assembly = context.LoadFromAssemblyPath(file);
            var type = assembly.GetCustomAttribute<CalculationPluginAttribute>()!.Source;
            if (!typeof(ICalculationSource).IsAssignableFrom(type) || type.IsAbstract || type.GetConstructor(Type.EmptyTypes) is null)
            {
                throw new PluginFaultException($"'{type.FullName}', which its attribute names, is no class with a constructor without parameters that implements 'ICalculationSource'");
            }

            var source = (ICalculationSource)Activator.CreateInstance(type)!;
            var guard = new PluginGuard(info.ToString(), limit);
            List<GuardedCalculation> calculations = [.. source.Create().Select(calculation => new GuardedCalculation(guard, calculation))];
            return calculations.Count == 0
                ? throw new PluginFaultException($"'{type.FullName}' makes no calculation")
                : new LoadedPlugin(info, Library(calculations), context, guard, calculations);
        }

        private CalculationLibrary Library(List<GuardedCalculation> calculations)
        {
            try
            {
                return new CalculationLibrary(info.Name, info.Version, calculations);
            }
            catch (ArgumentException exception)
            {
                throw new PluginFaultException(exception.Message.Split(" (Parameter", 2)[0], exception);
            }
        }

        private static string Explain(Exception exception)
        {
            // The runtime wraps what a load context or a constructor throws.
            for (var cause = exception; cause is not null; cause = cause.InnerException)
            {
                if (cause is PluginFaultException)
                {
                    return cause.Message;
                }
            }

            return exception switch
            {
                TargetInvocationException { InnerException: { } inner } => Containment.Describe(inner),
                BadImageFormatException or FileLoadException => $"it cannot be loaded ({exception.Message.TrimEnd('.')})",
                _ => Containment.Describe(exception),
            };
        }
    }
}
