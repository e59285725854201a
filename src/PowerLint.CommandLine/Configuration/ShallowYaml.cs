using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace PowerLint.CommandLine;

/// <summary>A parser that ends where a document nests deeper than any configuration does: what builds trees from it is recursive.</summary>
/// <param name="inner">The parser proper.</param>
internal sealed class ShallowYaml(IParser inner) : IParser
{
    private const int MostLevels = 50;

    private int _depth;

    /// <inheritdoc/>
    public ParsingEvent? Current => inner.Current;

    /// <inheritdoc/>
    public bool MoveNext()
    {
        bool moved;
        try
        {
            moved = inner.MoveNext();
        }
        catch (InvalidOperationException exception)
        {
            // The library's answer to some broken documents.
            var place = inner.Current?.End ?? Mark.Empty;
            throw new YamlException(place, place, "the text breaks off or is no YAML after this place", exception);
        }

        _depth += inner.Current?.NestingIncrease ?? 0;
        return _depth <= MostLevels
            ? moved
            : throw new YamlException(inner.Current!.Start, inner.Current.End, $"nested more than {MostLevels} deep");
    }
}
