using DiagRules.Packs;

namespace DiagRules.Cli.Inputs;

/// <summary>The files of a pack with one file of cases, from anywhere, in place of its own: so a case is read and checked as the pack's own are.</summary>
internal sealed class PackWithCase(PackFiles pack, string casePath) : PackFiles
{
    private const string CaseFolder = "cases/";
    private const string Placed = CaseFolder + "case.yaml";

    public override string Name => pack.Name;

    public override IReadOnlyList<string> Paths { get; } =
        [.. pack.Paths.Where(path => !path.StartsWith(CaseFolder, StringComparison.Ordinal)).Append(Placed).Order(StringComparer.Ordinal)];

    public override IReadOnlyList<string> Refused => pack.Refused;

    public override string Display(string path) => path == Placed ? casePath.Replace('\\', '/') : pack.Display(path);

    public override byte[] Read(string path, int limit)
    {
        if (path != Placed)
        {
            return pack.Read(path, limit);
        }

        using var file = File.OpenRead(casePath);
        var buffer = new byte[Math.Min(file.Length, limit + 1L)];
        return buffer[..file.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false)];
    }
}
