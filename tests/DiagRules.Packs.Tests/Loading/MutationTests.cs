using System.Text;
using CsCheck;

namespace DiagRules.Packs.Tests.Loading;

/// <summary>Whatever a pack holds, loading does not throw, and every problem has its place in a file of the pack.</summary>
public class MutationTests
{
    private static readonly byte[][] Pieces =
    [
        .. new[] { "{", "}", "[", "]", ":", ": ", "\n", "\n  ", "- ", "#", " # ", "\"", "'", "|", ">", "&a", "*a", "!", "%", "@", "$side", "$", "$$", "\t", "\0", "\u202E", "\uFEFF", "<<: ", "---\n", "true", "0x1", "1,5", "5 %", "no-such-id", "is not", "or", "((", "remove" }
            .Select(Encoding.UTF8.GetBytes),
        [0xFF], [0xC3], [0xED, 0xA0, 0x80],
    ];

    private static readonly Gen<(int File, int At, int Length, byte[] Put)[]> Mutations =
        Gen.Select(Gen.Int[0, 1000], Gen.Int[0, 100_000], Gen.Int[0, 6], Gen.OneOf(Gen.Int[0, Pieces.Length - 1].Select(i => Pieces[i]), Gen.Byte.Array[0, 4]))
            .Array[1, 4];

    [Fact]
    public void AnyBytes_DoNotThrow() =>
        Mutations.Sample(
            mutations =>
            {
                var files = ExamplePack.Files.Select(file => (file.Path, Bytes: Encoding.UTF8.GetBytes(file.Text))).ToArray();
                foreach (var (file, at, length, put) in mutations)
                {
                    ref var bytes = ref files[file % files.Length].Bytes;
                    var from = at % bytes.Length;
                    bytes = [.. bytes[..from], .. put, .. bytes[Math.Min(bytes.Length, from + length)..]];
                }

                var result = new PackLoader().Load(new ByteFiles(files));

                foreach (var problem in result.Problems)
                {
                    files.Select(file => file.Path).ShouldContain(problem.Place.File, problem.ToString());
                    problem.Message.ShouldNotBeNullOrWhiteSpace();
                }
            },
            iter: 300);

    private sealed class ByteFiles((string Path, byte[] Bytes)[] files) : PackFiles
    {
        public override string Name => "example";

        public override IReadOnlyList<string> Paths { get; } = [.. files.Select(file => file.Path).Order(StringComparer.Ordinal)];

        public override string Display(string path) => path;

        public override byte[] Read(string path, int limit) => files.First(file => file.Path == path).Bytes;
    }
}
