using System.Text.RegularExpressions;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>How C code in one source file writes a register: <c>DDRB</c>, <c>PORTA.DIR</c>, <c>GPIOA->MODER</c>.</summary>
internal sealed partial class RegisterSpelling(VisibleNames names)
{
    /// <summary>The register as an lvalue, or null where the file's headers do not offer it by its name.</summary>
    public string? Of(Register register)
    {
        var dot = register.Name.IndexOf('.', StringComparison.Ordinal);
        if (dot < 0)
        {
            return IsKnown(register.Name) ? register.Name : null;
        }

        var (block, member) = (register.Name[..dot], register.Name[(dot + 1)..]);
        if (!IsKnown(block) || !names.IsMember(member))
        {
            return null;
        }

        // As the file itself writes it; else by whether the header makes the block a pointer or an object.
        var written = Regex.Match(
            names.OwnText,
            $@"\b{Regex.Escape(block)}\s*(?<sign>\.|->)",
            RegexOptions.ExplicitCapture,
            TimeSpan.FromSeconds(1)
        );
        var sign =
            written.Success ? written.Groups["sign"].Value
            : Dereferenced().IsMatch(names.TextOf(block) ?? "") ? "."
            : Pointer().IsMatch(names.TextOf(block) ?? "") ? "->"
            : null;
        return sign is null ? null : block + sign + member;
    }

    private bool IsKnown(string name) => names.IsMacro(name) || names.IsDeclared(name);

    [GeneratedRegex(@"^\(\s*\*\s*\(", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Dereferenced();

    [GeneratedRegex(@"^\(\s*\(.*\*\s*\)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Pointer();
}
