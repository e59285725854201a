namespace PowerLint.Frontend;

/// <summary>
/// The layout that gcc gives a record with bit-fields on 8-bit AVR: every alignment is one byte, and a bit-field takes the next
/// bits whatever its declared type, across byte borders too; only a field of width zero goes on to the next byte. The parser's
/// own layout starts a new unit where a field would cross its type's. Measured with Debian's avr-gcc; the compiled functions of
/// the oracle tests hold it against that compiler.
/// </summary>
internal static class PackedLayout
{
    public static RecordLayout Of(bool isUnion, IReadOnlyList<RecordField> fields, Func<ClangType, long> sizeOf)
    {
        var placed = new List<RecordField>(fields.Count);
        long next = 0;
        long end = 0;
        foreach (var field in fields)
        {
            next = isUnion ? 0 : next;
            if (field.BitWidth is not { } width)
            {
                next = ToByte(next);
                placed.Add(field with { OffsetBits = next });
                next += 8 * Math.Max(0, sizeOf(field.Type));
            }
            else
            {
                next = width == 0 ? ToByte(next) : next;
                placed.Add(field with { OffsetBits = next });
                next += width;
            }

            end = Math.Max(end, next);
        }

        return new RecordLayout(isUnion, ToByte(end) / 8, placed);
    }

    private static long ToByte(long bits) => (bits + 7) / 8 * 8;
}
