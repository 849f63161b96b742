namespace DiagRules.Packs.Checks;

/// <summary>Finds circles in a graph of links. Walks without recursion, since a chain may be as long as a pack.</summary>
internal static class Circles
{
    /// <summary>One circle for each group of nodes that reach each other, as the links along it.</summary>
    /// <param name="count">Nodes are 0 .. count - 1.</param>
    /// <param name="links">All links.</param>
    /// <param name="from">Where a link begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="byPlace">Order of links in the files; each circle begins with its first link in this order.</param>
    public static IReadOnlyList<IReadOnlyList<TLink>> Find<TLink>(
        int count, IReadOnlyList<TLink> links, Func<TLink, int> from, Func<TLink, int> to, IComparer<TLink> byPlace)
    {
        var outgoing = new List<TLink>[count];
        foreach (var link in links)
        {
            (outgoing[from(link)] ??= []).Add(link);
        }

        var group = Groups(count, outgoing, to);
        return
        [
            .. links.Where(link => group[from(link)] == group[to(link)])
                .GroupBy(link => group[from(link)])
                .Select(inside => inside.Order(byPlace).First())
                .Select(first => Shortest(first, outgoing, group, from, to))
                .OrderBy(circle => circle[0], byPlace),
        ];
    }

    /// <summary>The group of each node: those that reach each other share a number (Tarjan 1972).</summary>
    private static int[] Groups<TLink>(int count, List<TLink>[] outgoing, Func<TLink, int> to)
    {
        var order = new int[count];
        var low = new int[count];
        var group = new int[count];
        Array.Fill(group, -1);
        var open = new Stack<int>();
        var path = new Stack<(int Node, int Next)>();
        var (visited, groups) = (0, 0);
        for (var root = 0; root < count; root++)
        {
            if (order[root] == 0)
            {
                path.Push((root, 0));
            }

            while (path.TryPop(out var step))
            {
                var (node, next) = step;
                if (next == 0)
                {
                    order[node] = low[node] = ++visited;
                    open.Push(node);
                }
                else
                {
                    low[node] = Math.Min(low[node], low[to(outgoing[node][next - 1])]);
                }

                var links = outgoing[node];
                while (links is not null && next < links.Count && order[to(links[next])] != 0)
                {
                    var target = to(links[next++]);
                    low[node] = group[target] < 0 ? Math.Min(low[node], order[target]) : low[node];
                }

                if (links is not null && next < links.Count)
                {
                    path.Push((node, next + 1));
                    path.Push((to(links[next]), 0));
                }
                else if (low[node] == order[node])
                {
                    Close(node, open, group, groups++);
                }
            }
        }

        return group;
    }

    private static void Close(int node, Stack<int> open, int[] group, int number)
    {
        int member;
        do
        {
            member = open.Pop();
            group[member] = number;
        }
        while (member != node);
    }

    /// <summary>The shortest way from the end of a link back to its beginning, the link itself first.</summary>
    private static List<TLink> Shortest<TLink>(TLink first, List<TLink>[] outgoing, int[] group, Func<TLink, int> from, Func<TLink, int> to)
    {
        var goal = from(first);
        var reachedBy = new Dictionary<int, TLink>();
        var queue = new Queue<int>([to(first)]);
        while (to(first) != goal && !reachedBy.ContainsKey(goal) && queue.TryDequeue(out var node))
        {
            foreach (var link in outgoing[node] ?? [])
            {
                var target = to(link);
                if (group[target] == group[goal] && target != to(first) && reachedBy.TryAdd(target, link))
                {
                    queue.Enqueue(target);
                }
            }
        }

        var back = new List<TLink>();
        for (var node = goal; node != to(first); node = from(back[^1]))
        {
            back.Add(reachedBy[node]);
        }

        back.Add(first);
        back.Reverse();
        return back;
    }
}
