using DiagRules.Model.Problems;
using DiagRules.Packs.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace DiagRules.Packs.Tree;

/// <summary>
/// Turns the parser's events into trees, one a document, and refuses what makes places ambiguous or hides content: anchors, aliases,
/// tags, merge keys, double keys, keys without a value.
/// </summary>
internal sealed class TreeReader
{
    private readonly SourceText _source;
    private readonly ProblemSink _problems;
    private readonly PackLimits _limits;
    private readonly Parser _parser;
    private int _depth;

    private TreeReader(SourceText source, PackLimits limits, ProblemSink problems)
    {
        _source = source;
        _limits = limits;
        _problems = problems;
        _parser = new Parser(new Scanner(new StringReader(source.Text), skipComments: true));
    }

    private ParsingEvent Current => _parser.Current!;

    /// <summary>The documents of a text; <see langword="null"/> when it could not be read to its end (the problem is reported).</summary>
    public static IReadOnlyList<Document>? Read(SourceText source, PackLimits limits, ProblemSink problems)
    {
        var reader = new TreeReader(source, limits, problems);
        try
        {
            return reader.ReadDocuments();
        }
        catch (DepthExceededException)
        {
            return null;
        }
#pragma warning disable CA1031 // The parser throws exceptions of several kinds on malformed text; each is the author's YAML, not a fault here.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            problems.Add(
                ProblemCatalogue.NotValidYaml,
                YamlFault.Place(source, exception, reader.LastPlace()),
                YamlFault.Describe(source, exception, reader.LastPlace()));
            return null;
        }
    }

    private SourcePlace LastPlace() => _parser.Current is { } last ? _source.Place(last.End.Line, last.End.Column) : _source.Place(1, 1);

    private List<Document> ReadDocuments()
    {
        var documents = new List<Document>();
        while (_parser.MoveNext())
        {
            switch (Current)
            {
                case DocumentStart start:
                    RefuseDirectives(start);
                    break;
                case StreamStart or StreamEnd or DocumentEnd:
                    break;
                default:
                    var before = _problems.Count;
                    documents.Add(new Document(ReadNode(), _problems.Count > before));
                    break;
            }
        }

        return documents;
    }

    private void RefuseDirectives(DocumentStart start)
    {
        var line = _source.Line((int)start.Start.Line);
        if (!start.IsImplicit && line.StartsWith("%"))
        {
            var shown = Excerpt.Of(line.ToString());
            _problems.Add(ProblemCatalogue.AnchorAliasOrTag, PlaceOf(start, line.Length), $"'{shown}' is a YAML directive; take it out, packs need none.");
        }
    }

    /// <summary>Reads the node the parser stands on; afterwards it stands on the node's last event.</summary>
    private Node ReadNode()
    {
        var broken = RefuseMarks(Current);
        Node read = Current switch
        {
            Scalar scalar => ReadScalar(scalar),
            SequenceStart start => ReadList(start),
            MappingStart start => ReadMap(start),
            _ => new BrokenNode(PlaceOf(Current, 0)),
        };
        return broken && read is ScalarNode ? new BrokenNode(read.Place) : read;
    }

    private bool RefuseMarks(ParsingEvent read)
    {
        var construct = read switch
        {
            AnchorAlias alias => $"'*{alias.Value}' is an alias",
            NodeEvent { Anchor.IsEmpty: false } node => $"'&{node.Anchor.Value}' is an anchor",
            NodeEvent { Tag.IsEmpty: false } node => $"'{WrittenTag(node)}' is a tag",
            _ => null,
        };
        if (construct is null)
        {
            return false;
        }

        var length = construct.IndexOf('\'', 1) - 1;
        _problems.Add(ProblemCatalogue.AnchorAliasOrTag, PlaceOf(read, length), $"{construct}; write the value out (in quotes, if the sign is part of a sentence).");
        return true;
    }

    private string WrittenTag(NodeEvent node)
    {
        var rest = _source.Text.AsSpan((int)node.Start.Index);
        var end = rest.IndexOfAny(" \r\n,");
        return (end < 0 ? rest : rest[..end]).ToString();
    }

    private ScalarNode ReadScalar(Scalar scalar)
    {
        var text = ScalarPlaces.Of(_source, scalar);
        return scalar.Style == ScalarStyle.Plain ? new ScalarNode(text) { CutOff = ScalarPlaces.CutOff(_source, scalar) } : new ScalarNode(text);
    }

    private ListNode ReadList(SequenceStart start)
    {
        Enter(start);
        var items = new List<Node>();
        while (Next() is not SequenceEnd)
        {
            var item = ReadNode();
            if (item is ScalarNode { Value: "", Text.IsQuoted: false })
            {
                _problems.Add(ProblemCatalogue.KeyWithoutValue, item.Place, "'-' has nothing behind it; write the item, or delete the line.");
                item = new BrokenNode(item.Place);
            }

            items.Add(item);
        }

        _depth--;
        return new ListNode(PlaceOf(start, 0), items);
    }

    private MapNode ReadMap(MappingStart start)
    {
        Enter(start);
        var pairs = new MapPairs(_problems, start.Style == MappingStyle.Flow);
        while (Next() is not MappingEnd)
        {
            var key = ReadNode();
            Next();
            pairs.Add(key, ReadNode());
        }

        _depth--;
        return new MapNode(PlaceOf(start, 0), pairs.All);
    }

    private ParsingEvent Next() => _parser.MoveNext() ? Current : throw new InvalidOperationException("The text ends in the middle of a map or list.");

    /// <summary>Stops while reading: the parser itself takes very long over text that opens brackets without end.</summary>
    private void Enter(NodeEvent start)
    {
        if (++_depth <= _limits.Nesting)
        {
            return;
        }

        _problems.Add(
            ProblemCatalogue.LimitExceeded,
            PlaceOf(start, 1),
            $"'{_depth}' maps and lists stand inside each other here; the limit is {_limits.Nesting} (setting '{nameof(PackLimits.Nesting)}').");
        throw new DepthExceededException();
    }

    private SourcePlace PlaceOf(ParsingEvent at, int length) => _source.Place(at.Start.Line, at.Start.Column, length);

    private sealed class DepthExceededException : Exception;
}
