namespace Formwright.Fields.Sparse;

/// <summary>Cuts a part of a graph in two halves and the fewest nodes that keep them apart.</summary>
internal sealed class Halving(NodeGraph nodes)
{
    private const int Low = 1;
    private const int High = 2;

    private readonly int[] side = new int[nodes.Count];
    private readonly int[] partner = new int[nodes.Count];
    private readonly int[] visited = new int[nodes.Count];
    private int visit;

    internal (int[] Low, int[] High, int[] Apart) Halve(int[] part)
    {
        (int[] Low, int[] High, int[] Apart) alongX = Cut(part, nodes.X, nodes.Y);
        (int[] Low, int[] High, int[] Apart) alongY = Cut(part, nodes.Y, nodes.X);
        return nodes.WeightOf(alongX.Apart) <= nodes.WeightOf(alongY.Apart) ? alongX : alongY;
    }

    private (int[] Low, int[] High, int[] Apart) Cut(int[] part, double[] along, double[] across)
    {
        int[] sorted = [.. part];
        Array.Sort(
            sorted,
            (a, b) =>
            {
                int order = along[a].CompareTo(along[b]);
                order = order != 0 ? order : across[a].CompareTo(across[b]);
                return order != 0 ? order : a.CompareTo(b);
            }
        );
        int half = nodes.WeightOf(part) / 2;
        int weight = 0;
        foreach (int node in sorted)
        {
            side[node] = weight < half ? Low : High;
            weight += nodes.Weights[node];
            partner[node] = -1;
        }

        foreach (int node in sorted)
        {
            if (side[node] == Low)
            {
                visit++;
                Augment(node);
            }
        }

        var apart = MarkCover(sorted);
        int[] low = [.. sorted.Where(node => side[node] == Low && !apart.Contains(node))];
        int[] high = [.. sorted.Where(node => side[node] == High && !apart.Contains(node))];
        int[] between = [.. sorted.Where(apart.Contains)];
        foreach (int node in sorted)
        {
            side[node] = 0;
        }

        return (low, high, between);
    }

    private bool Augment(int node)
    {
        foreach (int other in nodes.Touching[node])
        {
            if (side[other] == High && visited[other] != visit)
            {
                visited[other] = visit;
                if (partner[other] < 0 || Augment(partner[other]))
                {
                    partner[other] = node;
                    partner[node] = other;
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>König: reachable high nodes and unreachable low ones, walking from unmatched low nodes along alternating paths.</summary>
    private HashSet<int> MarkCover(int[] sorted)
    {
        visit++;
        var open = new Stack<int>();
        foreach (int node in sorted)
        {
            if (side[node] == Low && partner[node] < 0)
            {
                visited[node] = visit;
                open.Push(node);
            }
        }

        var cover = new HashSet<int>();
        while (open.TryPop(out int node))
        {
            foreach (int other in nodes.Touching[node])
            {
                if (side[other] == High && visited[other] != visit)
                {
                    visited[other] = visit;
                    cover.Add(other);
                    int back = partner[other];
                    if (back >= 0 && visited[back] != visit)
                    {
                        visited[back] = visit;
                        open.Push(back);
                    }
                }
            }
        }

        foreach (int node in sorted)
        {
            if (side[node] == Low && partner[node] >= 0 && visited[node] != visit)
            {
                cover.Add(node);
            }
        }

        return cover;
    }
}
