namespace DiagRules.Cli;

/// <summary>
/// The command cannot be carried out as it was given. The message is one line for the person who typed it; the tool prints it to
/// standard error and ends with <see cref="ExitCode.WrongUse"/>.
/// </summary>
internal sealed class WrongUseException(string message, Exception? inner = null) : Exception(message, inner);
