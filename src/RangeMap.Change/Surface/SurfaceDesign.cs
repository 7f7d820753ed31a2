using System.Numerics;
using Matrix = MathNet.Numerics.LinearAlgebra.Matrix<double>;
using Weights = MathNet.Numerics.LinearAlgebra.Vector<double>;

namespace RangeMap.Change;

/// <summary>
/// The values of a surface's functions at every square, one row a square, with the few products that a fit asks for again and again. Rows lie one behind the other and are
/// taken four at a time, several times quicker than general matrix products; sums run in a fixed order, so that two runs agree to the last figure.
/// </summary>
internal sealed class SurfaceDesign
{
    /// <summary>Rows in one piece of parallel work; the pieces, and so the sums, are the same on every machine.</summary>
    private const int RowsAtOnce = 512;

    private readonly double[] _values;
    private readonly int _width;

    private SurfaceDesign(double[] values, int rows, int columns, int width) => (_values, Rows, Columns, _width) = (values, rows, columns, width);

    /// <summary>Number of squares.</summary>
    public int Rows { get; }

    /// <summary>Number of functions.</summary>
    public int Columns { get; }

    /// <summary>Reckons the values at some points.</summary>
    public static SurfaceDesign Of(SurfaceBasis basis, IReadOnlyList<PlanePoint> points)
    {
        // Rows are filled up with zeros to whole vectors, rows to whole fours: they add nothing to any sum.
        var width = (basis.Count + Vector<double>.Count - 1) / Vector<double>.Count * Vector<double>.Count;
        var values = new double[(points.Count + 3) / 4 * 4 * width];
        Parallel.For(0, points.Count, i => basis.Fill(points[i], values.AsSpan(i * width, basis.Count)));
        return new(values, points.Count, basis.Count, width);
    }

    /// <summary>The surface at every square for some weights of the functions.</summary>
    public double[] Times(Weights weights)
    {
        var (padded, sums) = (new double[_width], new double[Rows]);
        for (var j = 0; j < weights.Count; j++)
            padded[j] = weights[j];
        for (var i = 0; i < Rows; i++)
            sums[i] = Dot(Row(i), padded);
        return sums;
    }

    /// <summary>Sum of the rows, each times its factor.</summary>
    public Weights Sum(ReadOnlySpan<double> factors)
    {
        var sum = new double[_width];
        for (var i = 0; i < Rows; i++)
            AddTimes(sum, Row(i), factors[i]);
        return Weights.Build.Dense(Columns, j => sum[j]);
    }

    /// <summary>Sum over squares of weight times the row's outer product with itself.</summary>
    public Matrix Squares(double[] weights)
    {
        var pieces = new double[(Rows + RowsAtOnce - 1) / RowsAtOnce][];
        Parallel.For(0, pieces.Length, piece => pieces[piece] = Squares(weights, piece * RowsAtOnce, Math.Min(Rows, (piece + 1) * RowsAtOnce)));
        var sum = new double[_width * _width];
        foreach (var piece in pieces)
            AddTimes(sum, piece, 1);
        return Matrix.Build.Dense(Columns, Columns, (j, k) => sum[Math.Max(j, k) * _width + Math.Min(j, k)]);
    }

    /// <summary>The quadratic form of every row with a symmetric matrix: variances of the surface where that is the covariance of the weights.</summary>
    public double[] Forms(Matrix matrix)
    {
        var padded = new double[_width * _width];
        for (var j = 0; j < Columns; j++)
        {
            for (var k = 0; k < Columns; k++)
                padded[j * _width + k] = matrix[j, k];
        }

        var forms = new double[Rows];
        Parallel.For(0, (Rows + RowsAtOnce - 1) / RowsAtOnce, piece =>
        {
            var product = new double[4 * _width];
            for (var i = piece * RowsAtOnce; i < Math.Min(Rows, (piece + 1) * RowsAtOnce); i += 4)
            {
                Multiply(i, padded, product);
                for (var row = 0; row < Math.Min(4, Rows - i); row++)
                    forms[i + row] = Dot(Row(i + row), product.AsSpan(row * _width, _width));
            }
        });
        return forms;
    }

    /// <summary>Lower triangle of the sum over some rows.</summary>
    private double[] Squares(double[] weights, int from, int to)
    {
        var sum = new double[_width * _width];
        for (var i = from; i < to; i += 4)
        {
            ReadOnlySpan<double> a = Row(i), b = Row(i + 1), c = Row(i + 2), d = Row(i + 3);
            double p = weights[i], q = Weight(i + 1), r = Weight(i + 2), s = Weight(i + 3);
            for (var j = 0; j < Columns; j++)
            {
                Vector<double> pa = new(p * a[j]), qb = new(q * b[j]), rc = new(r * c[j]), sd = new(s * d[j]);
                var line = sum.AsSpan(j * _width, _width);
                for (var k = 0; k <= j; k += Vector<double>.Count)
                {
                    var here = new Vector<double>(line[k..]) + pa * new Vector<double>(a[k..]) + qb * new Vector<double>(b[k..]) + rc * new Vector<double>(c[k..]) + sd * new Vector<double>(d[k..]);
                    here.CopyTo(line[k..]);
                }
            }
        }

        return sum;

        double Weight(int row) => row < to ? weights[row] : 0;
    }

    /// <summary>Four rows times a matrix of whole vectors.</summary>
    private void Multiply(int first, double[] matrix, Span<double> product)
    {
        product.Clear();
        for (var j = 0; j < Columns; j++)
        {
            var line = matrix.AsSpan(j * _width, _width);
            for (var row = 0; row < 4; row++)
                AddTimes(product.Slice(row * _width, _width), line, Row(first + row)[j]);
        }
    }

    private ReadOnlySpan<double> Row(int i) => _values.AsSpan(i * _width, _width);

    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var sum = Vector<double>.Zero;
        for (var k = 0; k < a.Length; k += Vector<double>.Count)
            sum += new Vector<double>(a[k..]) * new Vector<double>(b[k..]);
        return Vector.Sum(sum);
    }

    private static void AddTimes(Span<double> sum, ReadOnlySpan<double> row, double factor)
    {
        var times = new Vector<double>(factor);
        for (var k = 0; k < row.Length; k += Vector<double>.Count)
            (new Vector<double>(sum[k..]) + times * new Vector<double>(row[k..])).CopyTo(sum[k..]);
    }
}
