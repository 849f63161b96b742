using DiagRules.TestSupport;

namespace DiagRules.Packs.Tests.Tree;

/// <summary>A fault inside a text is at its exact place, however YAML folds, quotes or indents the text.</summary>
public class ScalarPlacesTests
{
    [Theory]
    [InlineData("a is c and «nix» is c")]
    [InlineData("\"a is c and «nix» is c\"")]
    [InlineData("'a is c and «nix» is c'")]
    [InlineData("\"a is\\x20c and «nix» is c\"")]
    [InlineData("\"a\\u0020is\\tc and «nix» is c\"")]
    [InlineData("a is c\n      and «nix» is c")]
    [InlineData("\"a is c\n      and «nix» is c\"")]
    [InlineData("\"a is c \\\n      and «nix» is c\"")]
    [InlineData("'a is c\n\n      and «nix» is c'")]
    [InlineData(">\n      a is c\n      and «nix» is c")]
    [InlineData(">-\n\n      a is c\n\n\n      and «nix» is c")]
    [InlineData("|\n      a is c\n      and «nix» is c")]
    [InlineData("|2-\n      a is c\n        and «nix» is c")]
    [InlineData("|+\n      a is c\n      and «nix» is c\n\n\n")]
    [InlineData(">\n      a is c\n        and\n      «nix» is c")]
    public void FaultInACondition_IsAtItsPlace(string condition)
    {
        var pack = PackText.Of($"findings:\n  a: {{ title: x, grades: [b, c] }}\nrules:\n  r:\n    advise: x\n    when: {condition}\n");

        var problem = pack.Load().Problems.First(problem => problem.Code == "DR2004");

        (problem.Place.Line, problem.Place.Column, problem.Place.Length).ShouldBe((pack.Mark!.Line, pack.Mark.Column, pack.Mark.Length));
    }

    [Fact]
    public void QuoteWrittenTwice_CountsOnce()
    {
        var pack = PackText.WithHead(PackText.Head + "sets: { side: { left: left } }\naccess:\n  a: { title: 'it''s «$nix»' }\n");

        var place = pack.Load().Problems.ShouldHaveSingleItem().Place;

        (place.Line, place.Column).ShouldBe((pack.Mark!.Line, pack.Mark.Column - "it''s ".Length), "a sentence is reported as a whole");
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void AnyLineBreak_CountsAsALine(string lineBreak)
    {
        var text = (PackText.Head + "hazards:\n  a: { signal-word: notice, says: x, nix: y }\n").Replace("\n", lineBreak, StringComparison.Ordinal);

        var place = new PackLoader().Load(PackFiles.FromText(("pack.yaml", text))).Problems.First(problem => problem.Code == "DR2001").Place;

        (place.Line, place.Column).ShouldBe((6, 38));
    }

    [Fact]
    public void CharactersBeyondTheBasicPlane_CountAsTwo()
    {
        var pack = PackText.Of("hazards:\n  a: { signal-word: notice, says: 🔥🔥, «nix»: y }\n");

        pack.Load().Problems.First(problem => problem.Code == "DR2001").Place.Column.ShouldBe(pack.Mark!.Column);
    }

    [Fact]
    public void ByteOrderMark_DoesNotCount()
    {
        var text = "\uFEFF" + PackText.Head + "hazard: {}\n";

        var place = new PackLoader().Load(PackFiles.FromText(("pack.yaml", text))).Problems.ShouldHaveSingleItem().Place;

        (place.Line, place.Column, place.Pack).ShouldBe((5, 1, "demo"));
    }

    [Fact]
    public void BytesThatAreNotUtf8_AreReportedAtTheirOffset()
    {
        byte[] bytes = [.. System.Text.Encoding.UTF8.GetBytes(PackText.Head + "hazards: # é"), 0xE9, (byte)'\n'];

        var problem = new PackLoader().Load(new OneFile(bytes)).Problems.ShouldHaveSingleItem();

        problem.Code.ShouldBe("DR1007");
        problem.Message.ShouldBe("'byte 0xE9 at offset 66' is not UTF-8; save the file as UTF-8.");
        (problem.Place.Line, problem.Place.Column).ShouldBe((5, 13));
    }

    private sealed class OneFile(byte[] bytes) : PackFiles
    {
        public override string Name => "one";

        public override IReadOnlyList<string> Paths => ["pack.yaml"];

        public override string Display(string path) => path;

        public override byte[] Read(string path, int limit) => bytes;
    }
}
