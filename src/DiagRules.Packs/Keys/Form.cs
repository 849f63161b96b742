using System.Collections.Immutable;

namespace DiagRules.Packs.Keys;

/// <summary>What stands behind a key. Immutable.</summary>
internal abstract record Form
{
    /// <summary>What is expected, as a message puts it: <c>a list of ids</c>.</summary>
    public abstract string Expected { get; }

    /// <summary>The form of a list of these.</summary>
    public ListForm List => new(this);
}

/// <summary>Text of a certain kind.</summary>
/// <param name="Kind">What the text is.</param>
internal sealed record ScalarForm(ScalarKind Kind) : Form
{
    /// <summary>The words allowed, where they are fixed; empty otherwise.</summary>
    public ImmutableArray<string> Words { get; init; } = [];

    public override string Expected => Kind.Describe();
}

/// <summary>A list.</summary>
/// <param name="Item">What each item is.</param>
internal sealed record ListForm(Form Item) : Form
{
    public override string Expected => Item is ScalarForm scalar ? $"a list of {scalar.Kind.Plural()}" : "a list";
}

/// <summary>A map with keys of the author's own.</summary>
/// <param name="Key">What each key is.</param>
/// <param name="Value">What each value is.</param>
internal sealed record MapForm(ScalarKind Key, Form Value) : Form
{
    public override string Expected => Value is ScalarForm scalar ? $"a map of {Key.Plural()} to {scalar.Kind.Plural()}" : $"a map of {Key.Plural()}";
}

/// <summary>A map with known keys.</summary>
/// <param name="Shape">The keys.</param>
internal sealed record ShapeForm(Shape Shape) : Form
{
    public override string Expected => $"a map with the keys of {Shape.Name}";
}

/// <summary>One of several forms, told apart by being text, a list or a map.</summary>
/// <param name="Forms">At most one of each.</param>
internal sealed record EitherForm(ImmutableArray<Form> Forms) : Form
{
    public override string Expected => string.Join(" or ", Forms.Select(form => form.Expected));

    public bool Equals(EitherForm? other) => other is not null && Forms.SequenceEqual(other.Forms);

    public override int GetHashCode() => Forms.Length;
}
