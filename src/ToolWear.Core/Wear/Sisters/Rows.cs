using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>A matrix of rows in fours, each a whole number of vectors: a sum over its rows is made a vector of
/// columns at a time, in registers, and only over rows where that vector is not 0.</summary>
internal sealed class Rows
{
    // so many rows at a time: their sums wait for each other no more
    private const int Together = 4;

    private readonly float[] cells;
    private readonly int row;

    // of each vector of columns: the rows in which it is not 0, in fours
    private readonly (int From, int End)[] bands;

    /// <summary>Takes the rows over.</summary>
    /// <param name="cells">One row after the other.</param>
    /// <param name="row">How long a row is.</param>
    internal Rows(float[] cells, int row)
    {
        (this.cells, this.row) = (cells, row);
        bands = [.. Enumerable.Range(0, row / Vectors.Width).Select(Band)];
    }

    /// <summary>One row.</summary>
    internal ReadOnlySpan<float> this[int i] => cells.AsSpan(i * row, row);

    /// <summary>y(c) = sum_i x(i) cell(i, c)</summary>
    /// <param name="x">A number for each row.</param>
    /// <param name="within">The rows that count: in fours.</param>
    /// <param name="y">The sums.</param>
    /// <param name="first">The column of the first sum, at the start of a vector.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void Sum(ReadOnlySpan<float> x, (int From, int Count) within, Span<float> y, int first)
    {
        ref float cell = ref MemoryMarshal.GetArrayDataReference(cells);
        ref float factor = ref MemoryMarshal.GetReference(x);
        for (int c = 0; c < y.Length; c += Vectors.Width)
        {
            (int from, int end) = bands[(first + c) / Vectors.Width];
            (from, end) = (Math.Max(from, within.From), Math.Min(end, within.From + within.Count));
            Vector<float> sum0 = Vector<float>.Zero;
            (Vector<float> sum1, Vector<float> sum2, Vector<float> sum3) = (sum0, sum0, sum0);
            for (int i = from; i < end; i += Together)
            {
                ref float at = ref Unsafe.Add(ref cell, (i * row) + first + c);
                ref float by = ref Unsafe.Add(ref factor, i);
                sum0 = Added(sum0, ref at, by);
                sum1 = Added(sum1, ref Unsafe.Add(ref at, row), Unsafe.Add(ref by, 1));
                sum2 = Added(sum2, ref Unsafe.Add(ref at, 2 * row), Unsafe.Add(ref by, 2));
                sum3 = Added(sum3, ref Unsafe.Add(ref at, 3 * row), Unsafe.Add(ref by, 3));
            }

            (sum0 + sum1 + (sum2 + sum3)).CopyTo(y[c..]);
        }
    }

    /// <summary>The matrix turned: its columns as rows.</summary>
    /// <param name="columns">How many of them.</param>
    /// <param name="turnedRow">How long they become.</param>
    internal Rows Turned(int columns, int turnedRow)
    {
        float[] turned = new float[columns * turnedRow];
        for (int at = 0; at < cells.Length; at++)
        {
            if (at % row < columns)
            {
                turned[(at % row * turnedRow) + (at / row)] = cells[at];
            }
        }

        return new(turned, turnedRow);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<float> Added(Vector<float> sum, ref float at, float by) =>
        Vector.MultiplyAddEstimate(Vector.LoadUnsafe(ref at), new Vector<float>(by), sum);

    private (int From, int End) Band(int vector)
    {
        bool[] any =
        [
            .. Enumerable
                .Range(0, cells.Length / row)
                .Select(i => this[i].Slice(vector * Vectors.Width, Vectors.Width).ContainsAnyExcept(0f)),
        ];
        int from = Array.IndexOf(any, true);
        return from < 0
            ? (0, 0)
            : (from / Together * Together, (Array.LastIndexOf(any, true) / Together * Together) + Together);
    }
}
