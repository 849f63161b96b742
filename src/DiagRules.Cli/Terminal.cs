using System.Text;

namespace DiagRules.Cli;

/// <summary>
/// Where a command reads from and writes to. Tests put text readers and writers in its place; nothing else in the tool knows the
/// process's console.
/// </summary>
internal sealed class Terminal(TextReader input, TextWriter output, TextWriter error)
{
    private const int NarrowestWidth = 40;
    private const int WidestWidth = 100;

    /// <summary>What is typed.</summary>
    public TextReader In { get; } = input;

    /// <summary>Where answers go.</summary>
    public TextWriter Out { get; } = output;

    /// <summary>Where wrong use is reported.</summary>
    public TextWriter Error { get; } = error;

    /// <summary>Columns a line may fill. Default 80.</summary>
    public int Width { get; init; } = 80;

    /// <summary>Whether to colour text. Default no.</summary>
    public bool HasColour { get; init; }

    /// <summary>Whether to repeat what was typed, because it comes from a file or another program and nobody saw it. Default no.</summary>
    public bool EchoesInput { get; init; }

    /// <summary>Told when somebody presses Ctrl-C, just before the process ends.</summary>
    public Action? OnInterrupt { get; set; }

    /// <summary>The console of this process: coloured only where a person looks at it, and never against NO_COLOR.</summary>
    public static Terminal OfProcess()
    {
        if (!Console.IsOutputRedirected)
        {
            Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        }

        var terminal = new Terminal(Console.In, Utf8(Console.OpenStandardOutput()), Utf8(Console.OpenStandardError()))
        {
            Width = Console.IsOutputRedirected ? 80 : WindowWidth(),
            EchoesInput = Console.IsInputRedirected,
            HasColour = !Console.IsOutputRedirected && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")),
        };
        Console.CancelKeyPress += (_, _) =>
        {
            terminal.OnInterrupt?.Invoke();
            Environment.Exit(ExitCode.Interrupted);
        };
        return terminal;
    }

    // Redirected output is UTF-8 on every machine, whatever the console's code page is: JSON must be.
    private static StreamWriter Utf8(Stream stream) => new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { AutoFlush = true };

    private static int WindowWidth()
    {
        try
        {
            return Console.WindowWidth <= 0 ? 80 : Math.Clamp(Console.WindowWidth, NarrowestWidth, WidestWidth);
        }
        catch (Exception exception) when (exception is IOException or PlatformNotSupportedException)
        {
            return 80;
        }
    }
}
