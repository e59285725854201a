using System.Text.RegularExpressions;
using PowerLint.Devices;

namespace PowerLint.Rules;

/// <summary>
/// How C code in one source file writes a register: <c>DDRB</c>, <c>PORTA.DIR</c>, <c>GPIOA->MODER</c>, <c>PM->SLEEP.reg</c> where the
/// header makes a union of the whole register and its bits.
/// </summary>
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

        var member = register.Name[(dot + 1)..];
        if (BlockName(register.Name[..dot]) is not { } block || Place(block, member) is not { } place)
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
        return sign is null ? null : block + sign + place;
    }

    // Step by step through the types that the header gives block and members, as far as its text tells.
    private string? Place(string block, string member)
    {
        var type = PointedTo().Match(names.TextOf(block) ?? "").Groups["type"].Value;
        if (!names.Structures.Has(type))
        {
            return names.IsMember(member) ? member : null;
        }

        foreach (var step in member.Split('.'))
        {
            var name = step.Split('[')[0];
            if (names.Structures.MemberType(type, name) is not { } next)
            {
                return member.Contains('.', StringComparison.Ordinal) || !names.Structures.Mentions(type, name) ? null
                    : names.IsMember(member) ? member
                    : null;
            }

            type = next;
        }

        return names.Structures.MemberType(type, "reg") is null ? member : member + ".reg";
    }

    // As the datasheet has it; else with what the header puts before the name of every block: NRF_POWER.
    private string? BlockName(string block)
    {
        if (IsKnown(block))
        {
            return block;
        }

        var ending = "_" + block;
        var found = names
            .Constants.Where(name =>
                name.EndsWith(ending, StringComparison.Ordinal)
                && !name[..^ending.Length].Contains('_', StringComparison.Ordinal)
                && Pointer().IsMatch(names.TextOf(name)!)
            )
            .Take(2)
            .ToArray();
        return found is [var one] ? one : null;
    }

    private bool IsKnown(string name) => names.IsMacro(name) || names.IsDeclared(name);

    [GeneratedRegex(@"\(\s*(?<type>\w+)\s*\*\s*\)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex PointedTo();

    [GeneratedRegex(@"^\(\s*\*\s*\(", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Dereferenced();

    [GeneratedRegex(@"^\(\s*\(.*\*\s*\)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Pointer();
}
