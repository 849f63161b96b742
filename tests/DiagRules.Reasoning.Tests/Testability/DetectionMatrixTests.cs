using CsCheck;
using DiagRules.Reasoning.Testability;

namespace DiagRules.Reasoning.Tests.Testability;

public sealed class DetectionMatrixTests
{
    private const double Tolerance = 1e-11;

    // A worked example of ours; terms after MIL-STD-2165 (1985), IEEE Std 1522-2004, Simpson and Sheppard (1992, 1994). Expected values were computed
    // apart from this library. Causes F1..F10 are 0..9, checks T1..T5 are 0..4; rates per million hours.
    private static readonly int[][] Example =
    [
        [1, 0, 0, 1, 0], [1, 0, 0, 1, 0], [0, 1, 0, 1, 0], [0, 1, 1, 0, 0], [0, 1, 1, 0, 0],
        [0, 1, 1, 0, 0], [0, 0, 0, 0, 1], [0, 0, 0, 0, 0], [0, 0, 1, 0, 0], [1, 1, 0, 1, 0],
    ];

    private static readonly double[] Rates = [4.0, 1.0, 2.5, 0.8, 0.5, 0.2, 0.7, 0.3, 0.6, 0.4];

    private static TestabilityReport Report { get; } = Matrix(Example, Rates).Analyse();

    [Fact]
    public void WorkedExample_DetectionAndGroups()
    {
        Report.Undetected.ShouldBe([7]);
        Groups(Report.AmbiguityGroups).ShouldBe(["0 1", "2", "3 4 5", "6", "8", "9"]);
        Report.DetectionRate.ShouldBe(0.9, Tolerance);
        Report.DetectionRateByRate.ShouldBe(0.972727272727, Tolerance);
        Report.MeanGroupSize.ShouldBe(1.5, Tolerance);
        Report.ExpectedGroupSize.ShouldBe(1.88888888889, Tolerance);
        Report.ExpectedGroupSizeByRate.ShouldBe(1.7476635514, Tolerance * 10);
    }

    [Theory]
    [InlineData(1, 0.444444444444, 0.392523364486)]
    [InlineData(2, 0.666666666667, 0.859813084112)]
    [InlineData(3, 1.0, 1.0)]
    [InlineData(4, 1.0, 1.0)]
    public void WorkedExample_IsolationRate(int groupSize, double byCount, double byRate)
    {
        Report.IsolationRate(groupSize).ShouldBe(byCount, Tolerance);
        Report.IsolationRateByRate(groupSize).ShouldBe(byRate, Tolerance);
    }

    [Fact]
    public void WorkedExample_RedundantChecksAndMinimalSets()
    {
        Report.RedundantChecks.ShouldBe([3]);
        Groups(Report.MinimalCheckSets).ShouldBe(["0 1 2 4"]);
        Report.HasAllMinimalCheckSets.ShouldBeTrue();
    }

    [Fact]
    public void WorkedExample_DoubleFaults()
    {
        Report.Imitations.Select(i => $"{i.First} {i.Second}: {string.Join(' ', i.LooksLike)}")
            .ShouldBe(["0 2: 9", "1 2: 9", "3 4: 5", "3 5: 4", "3 8: 4 5", "4 5: 3", "4 8: 3 5", "5 8: 3 4"]);
        Report.HiddenCauses.Select(h => (h.Cause, h.BehindCause)).ShouldBe([(0, 9), (1, 9), (2, 9), (8, 3), (8, 4), (8, 5)]);
    }

    [Fact]
    public void RandomMatrices_MinimalSetsAreThoseOfTheBruteForce() =>
        (from causes in Gen.Int[1, 7] from checks in Gen.Int[0, 7] from cells in Gen.Int[0, 1].Array[checks].Array[causes] select cells).Sample(
            cells =>
            {
                var report = Matrix(cells, [.. cells.Select(_ => 1.0)]).Analyse();

                Groups(report.MinimalCheckSets).ShouldBe(BruteForce(cells), ignoreOrder: true);
                report.RedundantChecks.ShouldBe(Enumerable.Range(0, cells[0].Length).Where(c => Keeps(cells, All(cells) & ~(1 << c))));
            },
            iter: 2000, threads: 1);

    [Fact]
    public void MoreMinimalSetsThanAllowed_AreSaidToBeIncomplete()
    {
        // Six causes, each shown by two checks of its own: 2^6 minimal sets.
        int[][] cells = [.. Enumerable.Range(0, 6).Select(c => Enumerable.Range(0, 12).Select(t => t / 2 == c ? 1 : 0).ToArray())];

        var all = Matrix(cells, [1, 1, 1, 1, 1, 1]).Analyse();
        var some = Matrix(cells, [1, 1, 1, 1, 1, 1]).Analyse(mostCheckSets: 10);

        all.MinimalCheckSets.Count.ShouldBe(64);
        all.HasAllMinimalCheckSets.ShouldBeTrue();
        some.MinimalCheckSets.Count.ShouldBe(10);
        some.HasAllMinimalCheckSets.ShouldBeFalse();
    }

    [Fact]
    public void IncompleteMinimalSets_AreMinimalAllTheSame() =>
        Gen.Int[0, 1].Array[7].Array[6].Sample(
            cells => Groups(Matrix(cells, [1, 1, 1, 1, 1, 1]).Analyse(mostCheckSets: 1).MinimalCheckSets).ShouldBeSubsetOf(BruteForce(cells)),
            iter: 500, threads: 1);

    [Fact]
    public void NothingDetected_IsZeroThroughout()
    {
        var report = Matrix([[0, 0]], [2]).Analyse();

        report.ShouldSatisfyAllConditions(
            r => r.DetectionRate.ShouldBe(0),
            r => r.IsolationRate(1).ShouldBe(0),
            r => r.MeanGroupSize.ShouldBe(0),
            r => r.ExpectedGroupSizeByRate.ShouldBe(0),
            r => Groups(r.MinimalCheckSets).ShouldBe([string.Empty]));
    }

    [Fact]
    public void MatrixThatDoesNotFit_IsRefusedWithTheReason()
    {
        Should.Throw<ArgumentException>(() => Matrix([], [])).Message.ShouldStartWith("The matrix has no rows; it needs one for every cause.");
        Should.Throw<ArgumentException>(() => Matrix([[1], [1, 0]], [1, 1])).Message.ShouldStartWith("Row 1 has 2 columns and row 0 has 1;");
        Should.Throw<ArgumentException>(() => Matrix([[1]], [0])).Message.ShouldStartWith("There must be one rate for each of the 1 causes,");
    }

    private static DetectionMatrix Matrix(int[][] cells, double[] rates) => new([.. cells.Select(row => row.Select(c => c == 1).ToArray())], rates);

    private static string[] Groups(IReadOnlyList<IReadOnlyList<int>> groups) => [.. groups.Select(g => string.Join(' ', g))];

    private static int All(int[][] cells) => (1 << cells[0].Length) - 1;

    /// <summary>Every subset of checks that tells apart as much as all, and does not without any one of its members.</summary>
    private static string[] BruteForce(int[][] cells)
    {
        bool IsMinimal(int set) => Keeps(cells, set) && Enumerable.Range(0, cells[0].Length).All(c => (set >> c & 1) == 0 || !Keeps(cells, set & ~(1 << c)));
        return [.. Enumerable.Range(0, All(cells) + 1).Where(IsMinimal)
            .Select(set => string.Join(' ', Enumerable.Range(0, cells[0].Length).Where(c => (set >> c & 1) != 0)))];
    }

    /// <summary>Whether a subset of checks still tells all rows, and a machine without fault, apart that all checks tell apart.</summary>
    private static bool Keeps(int[][] cells, int set)
    {
        int[][] rows = [.. cells, new int[cells[0].Length]];
        int Seen(int[] row, int checks) => Enumerable.Range(0, row.Length).Sum(c => (checks >> c & 1) * row[c] << c);
        return rows.All(a => rows.All(b => Seen(a, All(cells)) == Seen(b, All(cells)) || Seen(a, set) != Seen(b, set)));
    }
}
