using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace DiagRules.Reasoning.Planning.Search;

/// <summary>
/// Arithmetic on weights, padded with zeros to a multiple of four. Lanes and the order of sums are fixed, so that every machine gets the same digits.
/// Compiled at full optimisation from the first call: a command-line run ends before tiering would get there.
/// </summary>
internal static class Weights
{
    internal const int Lanes = 4;

    internal static int Padded(int count) => Math.Max(Lanes, (count + Lanes - 1) / Lanes * Lanes);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double Sum(ReadOnlySpan<double> weights)
    {
        ref var start = ref MemoryMarshal.GetReference(weights);
        var sum = Vector256<double>.Zero;
        for (var i = 0; i < weights.Length; i += Lanes)
        {
            sum += Vector256.LoadUnsafe(ref start, (nuint)i);
        }

        return Across(sum);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double Dot(ReadOnlySpan<double> weights, ReadOnlySpan<double> other)
    {
        other = other[..weights.Length];
        ref var first = ref MemoryMarshal.GetReference(weights);
        ref var second = ref MemoryMarshal.GetReference(other);
        var sum = Vector256<double>.Zero;
        for (var i = 0; i < weights.Length; i += Lanes)
        {
            sum += Vector256.LoadUnsafe(ref first, (nuint)i) * Vector256.LoadUnsafe(ref second, (nuint)i);
        }

        return Across(sum);
    }

    /// <summary>Sum of <c>weights * factors * values</c>: what a value is worth on the weights that remain, without keeping these.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double Dot(ReadOnlySpan<double> weights, ReadOnlySpan<double> factors, ReadOnlySpan<double> values)
    {
        factors = factors[..weights.Length];
        values = values[..weights.Length];
        ref var first = ref MemoryMarshal.GetReference(weights);
        ref var second = ref MemoryMarshal.GetReference(factors);
        ref var third = ref MemoryMarshal.GetReference(values);
        var sum = Vector256<double>.Zero;
        for (var i = 0; i < weights.Length; i += Lanes)
        {
            sum += Vector256.LoadUnsafe(ref first, (nuint)i) * Vector256.LoadUnsafe(ref second, (nuint)i) * Vector256.LoadUnsafe(ref third, (nuint)i);
        }

        return Across(sum);
    }

    /// <summary>The least dot product of the factors with rows of a matrix, given by where they start; infinite when there are none.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double LeastDot(ReadOnlySpan<double> factors, double[] matrix, ReadOnlySpan<int> rows)
    {
        ref var factor = ref MemoryMarshal.GetReference(factors);
        var least = double.PositiveInfinity;
        var r = 0;
        // Four rows at a time: their sums do not wait for each other.
        for (; r + 4 <= rows.Length; r += 4)
        {
            ref var a = ref matrix[rows[r]];
            ref var b = ref matrix[rows[r + 1]];
            ref var c = ref matrix[rows[r + 2]];
            ref var d = ref matrix[rows[r + 3]];
            var (sumA, sumB, sumC, sumD) = (Vector256<double>.Zero, Vector256<double>.Zero, Vector256<double>.Zero, Vector256<double>.Zero);
            for (var i = 0; i < factors.Length; i += Lanes)
            {
                var f = Vector256.LoadUnsafe(ref factor, (nuint)i);
                sumA += f * Vector256.LoadUnsafe(ref a, (nuint)i);
                sumB += f * Vector256.LoadUnsafe(ref b, (nuint)i);
                sumC += f * Vector256.LoadUnsafe(ref c, (nuint)i);
                sumD += f * Vector256.LoadUnsafe(ref d, (nuint)i);
            }

            least = Math.Min(least, Math.Min(Math.Min(Across(sumA), Across(sumB)), Math.Min(Across(sumC), Across(sumD))));
        }

        for (; r < rows.Length; r++)
        {
            least = Math.Min(least, Dot(factors, matrix.AsSpan(rows[r], factors.Length)));
        }

        return least;
    }

    /// <summary>Multiplies into <paramref name="result"/> and returns the sum of the products.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double Multiply(ReadOnlySpan<double> weights, ReadOnlySpan<double> factors, Span<double> result)
    {
        factors = factors[..weights.Length];
        result = result[..weights.Length];
        ref var first = ref MemoryMarshal.GetReference(weights);
        ref var second = ref MemoryMarshal.GetReference(factors);
        ref var target = ref MemoryMarshal.GetReference(result);
        var sum = Vector256<double>.Zero;
        for (var i = 0; i < weights.Length; i += Lanes)
        {
            var product = Vector256.LoadUnsafe(ref first, (nuint)i) * Vector256.LoadUnsafe(ref second, (nuint)i);
            product.StoreUnsafe(ref target, (nuint)i);
            sum += product;
        }

        return Across(sum);
    }

    /// <summary>Adds a multiple of the weights to the result.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void AddScaled(ReadOnlySpan<double> weights, double scale, Span<double> result)
    {
        result = result[..weights.Length];
        ref var source = ref MemoryMarshal.GetReference(weights);
        ref var target = ref MemoryMarshal.GetReference(result);
        for (var i = 0; i < weights.Length; i += Lanes)
        {
            (Vector256.LoadUnsafe(ref target, (nuint)i) + (Vector256.LoadUnsafe(ref source, (nuint)i) * scale)).StoreUnsafe(ref target, (nuint)i);
        }
    }

    /// <summary>Adds the products, element by element, to the result.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void AddProduct(ReadOnlySpan<double> weights, ReadOnlySpan<double> factors, Span<double> result)
    {
        factors = factors[..weights.Length];
        result = result[..weights.Length];
        ref var first = ref MemoryMarshal.GetReference(weights);
        ref var second = ref MemoryMarshal.GetReference(factors);
        ref var target = ref MemoryMarshal.GetReference(result);
        for (var i = 0; i < weights.Length; i += Lanes)
        {
            var product = Vector256.LoadUnsafe(ref first, (nuint)i) * Vector256.LoadUnsafe(ref second, (nuint)i);
            (Vector256.LoadUnsafe(ref target, (nuint)i) + product).StoreUnsafe(ref target, (nuint)i);
        }
    }

    private static double Across(Vector256<double> sum) => sum[0] + sum[1] + (sum[2] + sum[3]);
}
