namespace DiagRules;

/// <summary>A saved session cannot be resumed; the message says why in plain words.</summary>
public sealed class SessionFormatException : Exception
{
    /// <summary>Makes one.</summary>
    public SessionFormatException(string message)
        : base(message)
    {
    }

    /// <summary>Makes one with its cause.</summary>
    public SessionFormatException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
