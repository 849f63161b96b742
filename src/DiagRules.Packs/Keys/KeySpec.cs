namespace DiagRules.Packs.Keys;

/// <summary>One key: the reader, the problem of an unknown key, the JSON Schemas and the tidier all go by this.</summary>
/// <param name="Name">The key as packs write it.</param>
/// <param name="Form">What stands behind it.</param>
/// <param name="Meaning">One plain sentence.</param>
internal sealed record KeySpec(string Name, Form Form, string Meaning)
{
    /// <summary>Whether it must be there.</summary>
    public bool IsRequired { get; init; }

    /// <summary>How it may look, for the problem of its absence.</summary>
    public string? Example { get; init; }
}
