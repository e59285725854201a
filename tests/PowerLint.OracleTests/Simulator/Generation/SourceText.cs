using System.Text;

namespace PowerLint.OracleTests;

/// <summary>C text under construction, indented.</summary>
internal sealed class SourceText
{
    private readonly StringBuilder _text = new();
    private int _depth;

    /// <summary>Adds a line.</summary>
    public void Line(string text) => _text.Append(' ', 4 * _depth).Append(text).Append('\n');

    /// <summary>Adds a block: a head, a body in braces, something behind the closing brace.</summary>
    public void Block(string head, Action body, string tail = "")
    {
        Line(head.Length == 0 ? "{" : head + " {");
        _depth++;
        body();
        _depth--;
        Line("}" + tail);
    }

    /// <summary>Adds lines one level deeper.</summary>
    public void Indented(Action body)
    {
        _depth++;
        body();
        _depth--;
    }

    /// <inheritdoc/>
    public override string ToString() => _text.ToString();
}
