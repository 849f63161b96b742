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
        var (sumA, sumB, sumC, sumD) = (Vector256<double>.Zero, Vector256<double>.Zero, Vector256<double>.Zero, Vector256<double>.Zero);
        var i = 0;
        // Four sums that do not wait for each other.
        for (; i + (4 * Lanes) <= weights.Length; i += 4 * Lanes)
        {
            sumA += Vector256.LoadUnsafe(ref first, (nuint)i) * Vector256.LoadUnsafe(ref second, (nuint)i);
            sumB += Vector256.LoadUnsafe(ref first, (nuint)(i + Lanes)) * Vector256.LoadUnsafe(ref second, (nuint)(i + Lanes));
            sumC += Vector256.LoadUnsafe(ref first, (nuint)(i + (2 * Lanes))) * Vector256.LoadUnsafe(ref second, (nuint)(i + (2 * Lanes)));
            sumD += Vector256.LoadUnsafe(ref first, (nuint)(i + (3 * Lanes))) * Vector256.LoadUnsafe(ref second, (nuint)(i + (3 * Lanes)));
        }

        for (; i < weights.Length; i += Lanes)
        {
            sumA += Vector256.LoadUnsafe(ref first, (nuint)i) * Vector256.LoadUnsafe(ref second, (nuint)i);
        }

        return Across(sumA + sumB + (sumC + sumD));
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
