using CsCheck;
using Formwright.Jigs.Stock.Nesting;
using Formwright.Testing;
using Xunit;

namespace Formwright.Jigs.Tests;

/// <summary>What is worked on several rows at once comes to what each row comes to by itself.</summary>
public sealed class LanesTests
{
    // Whole figures, so that places often lie at a start or an end, where a sign of equality would show.
    private static readonly Gen<(int Place, int Start, int Length)[]> Rows = Gen.Select(
        Gen.Int[-5, 5],
        Gen.Int[-5, 5],
        Gen.Int[0, 5]
    ).Array[0, 23];

    [Fact]
    public void Each_place_within_its_stretch_moves_to_its_end() =>
        (from rows in Rows from byMm in Gen.Int[-3, 3] select (rows, byMm)).Holds(
            (rows, byMm) =>
            {
                double[] places = [.. rows.Select(row => (double)row.Place)];
                double[] from = [.. rows.Select(row => (double)row.Start)];
                double[] to = [.. rows.Select(row => (double)row.Start + row.Length)];
                double[] expected =
                [
                    .. rows.Select(row =>
                        row.Place > byMm + row.Start && row.Place < byMm + row.Start + row.Length
                            ? (double)(byMm + row.Start + row.Length)
                            : row.Place
                    ),
                ];
                double[] before = [.. places];
                Assert.Equal(!expected.SequenceEqual(before), Lanes.Push(places, from, to, byMm));
                Assert.Equal(expected, places);
            },
            iter: 5000
        );

    [Fact]
    public void The_least_is_found_wherever_it_stands()
    {
        Rows.Holds(
            rows =>
            {
                double[] places = [.. rows.Select(row => (double)row.Place)];
                Assert.Equal(places.Append(double.PositiveInfinity).Min(), Lanes.Least(places));
            },
            iter: 1000
        );
        for (int at = 0; at < 11; at++)
        {
            double[] places = new double[11];
            places[at] = -1;
            Assert.Equal(-1, Lanes.Least(places));
        }
    }
}
