namespace RangeMap.Change;

/// <summary>Lines of equal arrival over a lattice of squares, by marching squares with straight interpolation; drawn only where all four squares round a point are there, so that no line crosses the sea.</summary>
public static class FrontLines
{
    /// <summary>The lines where a value passes a level, each as a chain of points; closed where its ends are equal.</summary>
    /// <param name="lattice">Place and value by column and row.</param>
    /// <param name="level">The level.</param>
    public static IReadOnlyList<IReadOnlyList<PlanePoint>> At(IReadOnlyDictionary<(int Column, int Row), (PlanePoint Place, double Value)> lattice, double level)
    {
        var pieces = new List<(EdgeId From, EdgeId To)>();
        var places = new Dictionary<EdgeId, PlanePoint>();
        foreach (var (column, row) in lattice.Keys.OrderBy(key => key))
        {
            if (lattice.ContainsKey((column + 1, row)) && lattice.ContainsKey((column, row + 1)) && lattice.ContainsKey((column + 1, row + 1)))
                AddCell(column, row);
        }

        return Chain(pieces, places);

        void AddCell(int c, int r)
        {
            // Edges in order round the cell; where four of them are crossed, neighbours in that order are joined.
            EdgeId[] edges = [new(c, r, false), new(c + 1, r, true), new(c, r + 1, false), new(c, r, true)];
            var crossed = edges.Where(Crosses).ToArray();
            for (var i = 0; i + 1 < crossed.Length; i += 2)
                pieces.Add((crossed[i], crossed[i + 1]));
        }

        bool Crosses(EdgeId edge)
        {
            var (a, b) = (lattice[(edge.Column, edge.Row)], lattice[edge.Other]);
            if (a.Value < level == b.Value < level)
                return false;
            var share = (level - a.Value) / (b.Value - a.Value);
            places[edge] = new(a.Place.X + share * (b.Place.X - a.Place.X), a.Place.Y + share * (b.Place.Y - a.Place.Y));
            return true;
        }
    }

    private static List<IReadOnlyList<PlanePoint>> Chain(List<(EdgeId From, EdgeId To)> pieces, Dictionary<EdgeId, PlanePoint> places)
    {
        var at = new Dictionary<EdgeId, List<int>>();
        for (var i = 0; i < pieces.Count; i++)
        {
            foreach (var end in (EdgeId[])[pieces[i].From, pieces[i].To])
            {
                if (!at.TryGetValue(end, out var list))
                    at.Add(end, list = []);
                list.Add(i);
            }
        }

        var (used, lines) = (new bool[pieces.Count], new List<IReadOnlyList<PlanePoint>>());
        // Open lines begin at an end that only one piece has; what is left is closed.
        foreach (var start in at.Where(pair => pair.Value.Count == 1).Select(pair => pair.Key).Concat(pieces.Select(piece => piece.From)))
        {
            var line = Follow(start);
            if (line.Count > 1)
                lines.Add(line);
        }

        return lines;

        List<PlanePoint> Follow(EdgeId start)
        {
            var line = new List<PlanePoint> { places[start] };
            for (var here = start; ;)
            {
                var next = at[here].FindIndex(i => !used[i]);
                if (next < 0)
                    return line;
                var piece = at[here][next];
                used[piece] = true;
                here = pieces[piece].From == here ? pieces[piece].To : pieces[piece].From;
                line.Add(places[here]);
            }
        }
    }

    /// <summary>The edge from a lattice point to the next one east, or north.</summary>
    private readonly record struct EdgeId(int Column, int Row, bool North)
    {
        public (int Column, int Row) Other => North ? (Column, Row + 1) : (Column + 1, Row);
    }
}
