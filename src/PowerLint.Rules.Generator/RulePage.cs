using System.Collections.Generic;
using System.IO;
using System.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace PowerLint.Rules.Generator;

/// <summary>A rule's page: its front matter, checked, and the whole text.</summary>
internal sealed class RulePage
{
    private static readonly string[] Keys = { "id", "title", "summary", "level", "group", "since" };

    // Sections of a device model without which the rule cannot be checked.
    private static readonly string[] OptionalKeys = { "needs" };
    private static readonly string[] Levels = { "note", "warning", "error" };

    private readonly Dictionary<string, (string Value, int Line)> _entries = new();

    private RulePage(string path, SourceText text)
    {
        Path = path;
        Text = text;
    }

    /// <summary>The file.</summary>
    public string Path { get; }

    /// <summary>Its text.</summary>
    public SourceText Text { get; }

    /// <summary>What is wrong with it: message and line, from 0.</summary>
    public List<(string Message, int Line)> Defects { get; } = new();

    /// <summary>The page's body, without the front matter.</summary>
    public string Body { get; private set; } = "";

    /// <summary>The rule's identifier: the file's name.</summary>
    public string Id => System.IO.Path.GetFileNameWithoutExtension(Path);

    /// <summary>The name of the class that goes with it: <c>floating-pin</c>, <c>FloatingPin</c>.</summary>
    public string ClassName => string.Concat(Id.Split('-').Where(w => w.Length > 0).Select(Capitalise));

    /// <summary>An entry of the front matter; empty where it is missing.</summary>
    public string this[string key] => _entries.TryGetValue(key, out var entry) ? entry.Value : "";

    /// <summary>Reads a page.</summary>
    public static RulePage Read(string path, SourceText text)
    {
        var page = new RulePage(path, text);
        page.ReadFrontMatter();
        page.Check();
        return page;
    }

    /// <summary>A place in the page.</summary>
    public Location At(int line)
    {
        var span = Text.Lines[System.Math.Min(line, Text.Lines.Count - 1)].Span;
        return Location.Create(Path, span, Text.Lines.GetLinePositionSpan(span));
    }

    private static string Capitalise(string word) => char.ToUpperInvariant(word[0]) + word.Substring(1);

    private void ReadFrontMatter()
    {
        var lines = Text.Lines;
        if (lines.Count == 0 || lines[0].ToString().Trim() != "---")
        {
            Defects.Add(("the page must begin with front matter between two lines '---'", 0));
            return;
        }

        for (var line = 1; line < lines.Count; line++)
        {
            var text = lines[line].ToString().Trim();
            if (text == "---")
            {
                Body = Text.ToString(TextSpan.FromBounds(lines[line].EndIncludingLineBreak, Text.Length)).Trim() + "\n";
                return;
            }

            var colon = text.IndexOf(':');
            if (colon <= 0)
            {
                Defects.Add(("a line of the front matter must read 'key: value'", line));
                continue;
            }

            var key = text.Substring(0, colon).Trim();
            if (_entries.ContainsKey(key))
            {
                Defects.Add(($"'{key}' is given twice", line));
            }

            _entries[key] = (text.Substring(colon + 1).Trim(), line);
        }

        Defects.Add(("the front matter has no closing line '---'", 0));
    }

    private void Check()
    {
        if (Defects.Count > 0)
        {
            return;
        }

        foreach (var key in Keys.Where(key => this[key].Length == 0))
        {
            Defects.Add(($"the front matter lacks '{key}'", 0));
        }

        foreach (var entry in _entries.Where(entry => !Keys.Concat(OptionalKeys).Contains(entry.Key)))
        {
            Defects.Add(
                (
                    $"the front matter knows no '{entry.Key}'; use {string.Join(", ", Keys.Concat(OptionalKeys))}",
                    entry.Value.Line
                )
            );
        }

        if (this["id"].Length > 0 && this["id"] != Id)
        {
            Defects.Add(($"the id '{this["id"]}' differs from the file's name '{Id}'", _entries["id"].Line));
        }

        if (this["level"].Length > 0 && !Levels.Contains(this["level"]))
        {
            Defects.Add(("the level must be one of " + string.Join(", ", Levels), _entries["level"].Line));
        }
    }
}
