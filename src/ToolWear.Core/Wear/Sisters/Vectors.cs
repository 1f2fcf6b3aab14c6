using System.Numerics;
using System.Runtime.CompilerServices;

namespace ToolWear.Core.Wear.Sisters;

// optimised from the first call on: a command is over before the runtime would come back to them
/// <summary>Sums over whole rows, as many numbers at a time as the processor takes; a row is a whole number of vectors.</summary>
internal static class Vectors
{
    internal static int Width => Vector<float>.Count;

    /// <summary>sum x y</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static float Dot(ReadOnlySpan<float> x, ReadOnlySpan<float> y)
    {
        Vector<float> sum = Vector<float>.Zero;
        for (int i = 0; i < x.Length; i += Width)
        {
            sum += new Vector<float>(x[i..]) * new Vector<float>(y[i..]);
        }

        return Vector.Sum(sum);
    }

    /// <summary>y += a x, of any length.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void AddScaled<T>(Span<T> y, T a, ReadOnlySpan<T> x)
        where T : struct, INumber<T>
    {
        Vector<T> factor = new(a);
        int i = 0;
        for (; i <= y.Length - Vector<T>.Count; i += Vector<T>.Count)
        {
            (new Vector<T>(y[i..]) + (factor * new Vector<T>(x[i..]))).CopyTo(y[i..]);
        }

        for (; i < y.Length; i++)
        {
            y[i] += a * x[i];
        }
    }

    /// <summary>y *= a</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Scale(Span<float> y, float a)
    {
        for (int i = 0; i < y.Length; i += Width)
        {
            (new Vector<float>(y[i..]) * a).CopyTo(y[i..]);
        }
    }

    /// <summary>y *= x</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Multiply(Span<float> y, ReadOnlySpan<float> x)
    {
        for (int i = 0; i < y.Length; i += Width)
        {
            (new Vector<float>(y[i..]) * new Vector<float>(x[i..])).CopyTo(y[i..]);
        }
    }

    /// <summary>y = x - y</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void TakeFrom(Span<float> y, ReadOnlySpan<float> x)
    {
        for (int i = 0; i < y.Length; i += Width)
        {
            (new Vector<float>(x[i..]) - new Vector<float>(y[i..])).CopyTo(y[i..]);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static float Sum(ReadOnlySpan<float> x)
    {
        Vector<float> sum = Vector<float>.Zero;
        for (int i = 0; i < x.Length; i += Width)
        {
            sum += new Vector<float>(x[i..]);
        }

        return Vector.Sum(sum);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static float Max(ReadOnlySpan<float> x)
    {
        Vector<float> most = new(float.NegativeInfinity);
        for (int i = 0; i < x.Length; i += Width)
        {
            most = Vector.Max(most, new Vector<float>(x[i..]));
        }

        float max = most[0];
        for (int i = 1; i < Width; i++)
        {
            max = Math.Max(max, most[i]);
        }

        return max;
    }

    /// <summary>x = exp(x - top)</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void ExpBelow(Span<float> x, float top)
    {
        for (int i = 0; i < x.Length; i += Width)
        {
            Vector.Exp(new Vector<float>(x[i..]) - new Vector<float>(top)).CopyTo(x[i..]);
        }
    }

    /// <summary>Divides by the largest and gives its logarithm; a row of zeros stays and gives minus infinity.</summary>
    internal static double ScaleToMax(Span<float> x)
    {
        float most = Max(x);
        if (most > 0)
        {
            Scale(x, 1 / most);
        }

        return Math.Log(most);
    }
}
