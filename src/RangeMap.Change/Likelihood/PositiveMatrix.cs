namespace RangeMap.Change;

/// <summary>Small symmetric positive definite matrices: informations and their inverses.</summary>
internal static class PositiveMatrix
{
    // A pivot that loses twelve of its sixteen digits is no pivot.
    private const double LeastPivot = 1e-12;

    /// <summary>The inverse by way of the Cholesky factor; null where the matrix is not positive definite to working accuracy.</summary>
    internal static double[,]? Inverse(double[,] matrix)
    {
        var n = matrix.GetLength(0);
        var factor = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = matrix[i, j];
                for (var k = 0; k < j; k++)
                    sum -= factor[i, k] * factor[j, k];
                if (i > j)
                    factor[i, j] = sum / factor[j, j];
                else if (sum > LeastPivot * matrix[i, i])
                    factor[i, i] = Math.Sqrt(sum);
                else
                    return null;
            }
        }

        return FromFactor(factor);
    }

    /// <summary>a' M b.</summary>
    internal static double Form(ReadOnlySpan<double> a, double[,] matrix, ReadOnlySpan<double> b)
    {
        double sum = 0;
        for (var i = 0; i < a.Length; i++)
        {
            for (var j = 0; j < b.Length; j++)
                sum += a[i] * matrix[i, j] * b[j];
        }

        return sum;
    }

    /// <summary>M v.</summary>
    internal static double[] Times(double[,] matrix, ReadOnlySpan<double> vector)
    {
        var product = new double[vector.Length];
        for (var i = 0; i < product.Length; i++)
        {
            for (var j = 0; j < vector.Length; j++)
                product[i] += matrix[i, j] * vector[j];
        }

        return product;
    }

    // With L the factor and M its inverse, the inverse wanted is M' M.
    private static double[,] FromFactor(double[,] factor)
    {
        var n = factor.GetLength(0);
        double[,] lower = new double[n, n], inverse = new double[n, n];
        for (var column = 0; column < n; column++)
        {
            lower[column, column] = 1 / factor[column, column];
            for (var row = column + 1; row < n; row++)
            {
                for (var k = column; k < row; k++)
                    lower[row, column] -= factor[row, k] * lower[k, column];
                lower[row, column] /= factor[row, row];
            }
        }

        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                for (var k = Math.Max(i, j); k < n; k++)
                    inverse[i, j] += lower[k, i] * lower[k, j];
            }
        }

        return inverse;
    }
}
