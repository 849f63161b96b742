using NRules.RuleModel;

namespace DiagRules.Rules;

/// <summary>The part of a branch that rests on readings and plain observations holds. A fact of the rule network.</summary>
internal abstract class Gate(Branch branch, bool isWatched)
{
    private static readonly object Key = new();

    public Branch Branch { get; } = branch;

    /// <summary>Links the line's conclusion to the match that brought it about, so that it falls with it.</summary>
    public void Conclude(IContext context)
    {
        // A match that is updated fires again; its conclusion is there already.
        if (context.GetLinked(Key) is not null)
        {
            return;
        }

        var line = Branch.Line;
        object conclusion = line.Node < 0
            ? new Outcome(line)
            : new Support(line.Node, line.Grades, line, isStrict: line.World == World.Strict, isWatched);
        context.InsertLinked(Key, conclusion);
    }
}

/// <summary>A gate without literals: open means concluded. One generic rule serves all of them.</summary>
internal sealed class FreeGate(Branch branch, bool isWatched) : Gate(branch, isWatched);

/// <summary>A gate whose branch waits for settled findings as well; each has a rule of its own.</summary>
internal sealed class GuardedGate(Branch branch, bool isWatched) : Gate(branch, isWatched);
