using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace PowerLint.Devices;

/// <summary>Writes one register of an SVD file as a device file has it.</summary>
internal static class SkeletonRegister
{
    private const int LineLength = 140;

    /// <summary>
    /// The register's entry, in lines that end with a line feed. A register of an odd width takes the next width that there
    /// is; one of 64 bits becomes two.
    /// </summary>
    public static void Write(StringBuilder text, SvdRegister register, bool isView)
    {
        if (register.SizeBits <= 32)
        {
            var width =
                register.SizeBits <= 8 ? 8
                : register.SizeBits <= 16 ? 16
                : 32;
            WriteOne(text, register, width, isView);
            return;
        }

        WriteOne(text, Part(register, 0, register.Name), 32, isView);
        WriteOne(text, Part(register, 32, $"{register.Name}_HIGH"), 32, isView);
    }

    private static SvdRegister Part(SvdRegister register, int fromBit, string name) =>
        register with
        {
            Name = name,
            Address = register.Address + (ulong)(fromBit / 8),
            SizeBits = 32,
            Reset = (register.Reset >> fromBit) & uint.MaxValue,
            ResetMask = (register.ResetMask >> fromBit) & uint.MaxValue,
            Fields =
            [
                .. register
                    .Fields.Where(field => field.LowBit < fromBit + 32 && field.LowBit + field.WidthBits > fromBit)
                    .Select(field =>
                    {
                        var low = Math.Max(field.LowBit, fromBit);
                        var width = Math.Min(field.LowBit + field.WidthBits, fromBit + 32) - low;
                        return field with
                        {
                            LowBit = low - fromBit,
                            WidthBits = width,
                            // A field over both halves has its values in neither.
                            Values =
                                width == field.WidthBits
                                    ? field.Values
                                    : ImmutableSortedDictionary<ulong, string>.Empty,
                        };
                    }),
            ],
        };

    private static void WriteOne(StringBuilder text, SvdRegister register, int width, bool isView)
    {
        var properties = new List<string>
        {
            $"address: 0x{register.Address.ToString("X8", CultureInfo.InvariantCulture)}",
            string.Create(CultureInfo.InvariantCulture, $"width: {width}"),
        };
        if (isView)
        {
            properties.Add("view: true");
        }
        else
        {
            AddBehaviour(properties, register, width);
        }

        var head = $"  {SkeletonText.Word(register.Name)}: {{ {string.Join(", ", properties)}";
        var hasValues = register.Fields.Any(field => !field.Values.IsEmpty);
        var fields = register.Fields.Select(field => $"{SkeletonText.Word(field.Name)}: {Bits(field)}").ToArray();
        var flow = fields.Length == 0 ? "" : $", fields: {{ {string.Join(", ", fields)} }}";
        var remark = register.Protection is { } protection ? $" # {ProtectionRemark(protection)}" : "";
        if (!hasValues && head.Length + flow.Length + remark.Length + 2 <= LineLength)
        {
            text.Append(head).Append(flow).Append(" }").Append(remark).Append('\n');
            return;
        }

        text.Append("  ").Append(SkeletonText.Word(register.Name)).Append(':').Append(remark).Append('\n');
        foreach (var property in properties)
        {
            text.Append("    ").Append(property).Append('\n');
        }

        if (!hasValues)
        {
            if (fields.Length > 0)
            {
                WriteRows(text, fields);
            }

            return;
        }

        text.Append("    fields:\n");
        foreach (var field in register.Fields)
        {
            text.Append("      ").Append(SkeletonText.Word(field.Name)).Append(": ");
            if (field.Values.IsEmpty)
            {
                text.Append(Bits(field)).Append('\n');
                continue;
            }

            var values = field.Values.Select(value =>
                string.Create(CultureInfo.InvariantCulture, $"{value.Key}: {SkeletonText.Word(value.Value)}")
            );
            text.Append("{ bits: ")
                .Append(Bits(field))
                .Append(", values: { ")
                .AppendJoin(", ", values)
                .Append(" } }\n");
        }
    }

    // Fields without values, several on a line.
    private static void WriteRows(StringBuilder text, string[] fields)
    {
        text.Append("    fields: {");
        var length = LineLength;
        foreach (var field in fields)
        {
            length += field.Length + 2;
            if (length > LineLength)
            {
                text.Append("\n      ");
                length = 6 + field.Length;
            }
            else
            {
                text.Append(' ');
            }

            text.Append(field).Append(',');
        }

        text.Append("\n    }\n");
    }

    private static string ProtectionRemark(SvdProtection protection) =>
        protection switch
        {
            SvdProtection.Secure => "secure software only",
            SvdProtection.NonSecure => "secure and non-secure software",
            _ => "privileged software only",
        };

    private static string Bits(SvdField field) =>
        field.WidthBits == 1
            ? field.LowBit.ToString(CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"\"{field.LowBit + field.WidthBits - 1}:{field.LowBit}\"");

    private static void AddBehaviour(List<string> properties, SvdRegister register, int width)
    {
        var own = (1UL << register.SizeBits) - 1;
        var behaviour = SkeletonBehaviour.Of(register);
        if (behaviour.Kind is { } kind)
        {
            properties.Add($"kind: {kind}");
        }

        if ((register.Reset & register.ResetMask) != 0)
        {
            properties.Add(
                $"reset: 0x{(register.Reset & register.ResetMask).ToString("X", CultureInfo.InvariantCulture)}"
            );
        }

        foreach (
            var (name, mask) in (ReadOnlySpan<(string, ulong)>)
                [
                    ("reset-unknown", own & ~register.ResetMask),
                    ("hardware-changed", behaviour.HardwareChanged),
                    ("write-one-to-clear", behaviour.MaskOf(SvdWriteEffect.OneToClear)),
                    ("write-one-to-set", behaviour.MaskOf(SvdWriteEffect.OneToSet)),
                    ("write-one-to-toggle", behaviour.MaskOf(SvdWriteEffect.OneToToggle)),
                    ("write-zero-to-clear", behaviour.MaskOf(SvdWriteEffect.ZeroToClear)),
                    ("write-zero-to-set", behaviour.MaskOf(SvdWriteEffect.ZeroToSet)),
                    ("write-zero-to-toggle", behaviour.MaskOf(SvdWriteEffect.ZeroToToggle)),
                    ("write-to-clear", behaviour.MaskOf(SvdWriteEffect.Clear)),
                    ("write-to-set", behaviour.MaskOf(SvdWriteEffect.Set)),
                    ("read-only", behaviour.ReadOnly),
                ]
        )
        {
            if (mask != 0)
            {
                properties.Add(
                    $"{name}: {(mask == own && register.SizeBits == width ? "all" : $"0x{mask.ToString("X", CultureInfo.InvariantCulture)}")}"
                );
            }
        }
    }
}
