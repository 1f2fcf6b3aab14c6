using System.Numerics;
using System.Runtime.CompilerServices;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>Sums over whole rows, as many numbers at a time as the processor takes.</summary>
internal static class Vectors
{
    /// <summary>sum x y</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double Dot(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        y = y[..x.Length];
        int width = Vector<double>.Count;
        Vector<double> one = Vector<double>.Zero;
        Vector<double> two = Vector<double>.Zero;
        int i = 0;
        for (; i <= x.Length - (2 * width); i += 2 * width)
        {
            one += new Vector<double>(x.Slice(i, width)) * new Vector<double>(y.Slice(i, width));
            two += new Vector<double>(x.Slice(i + width, width)) * new Vector<double>(y.Slice(i + width, width));
        }

        double sum = Vector.Sum(one + two);
        for (; i < x.Length; i++)
        {
            sum += x[i] * y[i];
        }

        return sum;
    }

    /// <summary>y += a x</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void AddScaled(Span<double> y, double a, ReadOnlySpan<double> x)
    {
        x = x[..y.Length];
        int width = Vector<double>.Count;
        Vector<double> factor = new(a);
        int i = 0;
        for (; i <= y.Length - width; i += width)
        {
            Span<double> part = y.Slice(i, width);
            (new Vector<double>(part) + (factor * new Vector<double>(x.Slice(i, width)))).CopyTo(part);
        }

        for (; i < y.Length; i++)
        {
            y[i] += a * x[i];
        }
    }

    /// <summary>y *= x</summary>
    internal static void Multiply(Span<double> y, ReadOnlySpan<double> x)
    {
        for (int i = 0; i < y.Length; i++)
        {
            y[i] *= x[i];
        }
    }

    internal static double Max(ReadOnlySpan<double> x)
    {
        double most = double.NegativeInfinity;
        foreach (double value in x)
        {
            most = Math.Max(most, value);
        }

        return most;
    }

    /// <summary>Divides by the largest and gives its logarithm; a row of zeros stays and gives minus infinity.</summary>
    internal static double ScaleToMax(Span<double> x)
    {
        double most = Max(x);
        if (most <= 0)
        {
            return double.NegativeInfinity;
        }

        for (int i = 0; i < x.Length; i++)
        {
            x[i] /= most;
        }

        return Math.Log(most);
    }
}
