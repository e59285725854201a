using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>Makes long runs of integer constants bytes: fonts and tables would otherwise cost a node an element.</summary>
internal static class ConstantRuns
{
    private const int ShortestRun = 8;

    /// <summary>The same entries, runs put together.</summary>
    public static IReadOnlyList<InitializerEntry> Compact(List<InitializerEntry> entries)
    {
        var result = new List<InitializerEntry>(entries.Count);
        for (var i = 0; i < entries.Count; )
        {
            var length = RunLength(entries, i, out var elementBytes);
            if (length < ShortestRun)
            {
                result.Add(entries[i++]);
                continue;
            }

            var bytes = new byte[length * elementBytes];
            for (var k = 0; k < length; k++)
            {
                var value = ((IntegerConstant)((ValueEntry)entries[i + k]).Value).Value;
                for (var b = 0; b < elementBytes; b++)
                {
                    bytes[(k * elementBytes) + b] = (byte)(value >> (8 * b));
                }
            }

            result.Add(new BytesEntry(entries[i].OffsetBytes, bytes, elementBytes));
            i += length;
        }

        return result;
    }

    private static int RunLength(List<InitializerEntry> entries, int start, out int elementBytes)
    {
        elementBytes = 0;
        var length = 0;
        while (
            start + length < entries.Count
            && entries[start + length]
                is ValueEntry { BitField: null, Value: IntegerConstant { Type: IntegerType } value }
            && value.Type.SizeBytes is 1 or 2 or 4 or 8
            && (length == 0 || value.Type.SizeBytes == elementBytes)
        )
        {
            elementBytes = (int)value.Type.SizeBytes;
            if (entries[start + length].OffsetBytes != entries[start].OffsetBytes + (length * elementBytes))
            {
                break;
            }

            length++;
        }

        return length;
    }
}
