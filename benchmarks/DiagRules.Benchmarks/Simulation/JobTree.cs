using DiagRules.Reasoning.Planning;

namespace DiagRules.Benchmarks.Simulation;

/// <summary>Plays jobs by one policy. Where jobs take the same course the policy is asked once.</summary>
internal sealed class JobTree(JobPolicy policy, Situation start)
{
    private readonly Dictionary<(int Node, JobStep Step, int Answer), int> _next = [];
    private readonly List<(Situation Situation, JobStep Step, double Cost)> _nodes = [];

    /// <summary>How often the policy was asked.</summary>
    public int Decisions => _nodes.Count;

    /// <summary>What a job costs from the complaint to its end.</summary>
    public double Play(JobDraw job)
    {
        var node = _nodes.Count == 0 ? Add(start) : 0;
        for (var spent = 0.0; ;)
        {
            var (situation, step, cost) = _nodes[node];
            spent += cost;
            if (step.Kind == StepKind.Specialist || (step.Kind == StepKind.Repair && job.IsCuredBy(situation, step.Index)))
            {
                return spent;
            }

            var answer = step.Kind == StepKind.Check ? job.Answer(situation, step.Index) : 0;
            node = Follow(node, step, answer);
        }
    }

    private int Follow(int node, JobStep step, int answer)
    {
        if (!_next.TryGetValue((node, step, answer), out var next))
        {
            var situation = _nodes[node].Situation;
            next = Add(step.Kind == StepKind.Check ? situation.AfterCheck(step.Index, answer) : situation.AfterRepair(step.Index));
            _next.Add((node, step, answer), next);
        }

        return next;
    }

    private int Add(Situation situation)
    {
        var step = policy.Next(situation);
        _nodes.Add((situation, step, new OpenWork(situation).Cost(step)));
        return _nodes.Count - 1;
    }
}
