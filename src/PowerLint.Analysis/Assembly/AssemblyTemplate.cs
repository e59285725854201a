using System.Globalization;

namespace PowerLint.Analysis;

/// <summary>An instruction of an inline-assembly template: a mnemonic and its operands as written.</summary>
internal sealed record AssemblyInstruction(string? Label, string Mnemonic, IReadOnlyList<string> Operands);

/// <summary>Takes a template apart: lines, labels, mnemonics, operands.</summary>
internal static class AssemblyTemplate
{
    public static List<AssemblyInstruction> Parse(string template)
    {
        var instructions = new List<AssemblyInstruction>();
        foreach (var raw in template.Split(['\n', '\r', ';', '$']))
        {
            var line = raw.Trim();
            var comment = line.IndexOf("//", StringComparison.Ordinal);
            line = comment >= 0 ? line[..comment].Trim() : line;
            string? label = null;
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            if (colon > 0 && line[..colon].All(c => char.IsLetterOrDigit(c) || c is '_' or '.' or 'L' or '%' or '='))
            {
                label = line[..colon];
                line = line[(colon + 1)..].Trim();
            }

            if (line.Length == 0)
            {
                if (label is not null)
                {
                    instructions.Add(new AssemblyInstruction(label, "", []));
                }

                continue;
            }

            var space = line.IndexOfAny([' ', '\t']);
            var mnemonic = (space < 0 ? line : line[..space]).ToLowerInvariant();
            var operands =
                space < 0
                    ? []
                    : line[space..].Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            instructions.Add(new AssemblyInstruction(label, mnemonic, operands));
        }

        return instructions;
    }

    /// <summary>A number as assemblers write it, or null.</summary>
    public static ulong? Number(string text)
    {
        text = text.TrimStart('#', '$');
        var isNegative = text.StartsWith('-');
        text = isNegative ? text[1..] : text;
        var isHex = text.StartsWith("0x", StringComparison.OrdinalIgnoreCase);
        return ulong.TryParse(
            isHex ? text[2..] : text,
            isHex ? NumberStyles.HexNumber : NumberStyles.None,
            CultureInfo.InvariantCulture,
            out var value
        )
            ? isNegative
                ? 0 - value
                : value
            : null;
    }
}
