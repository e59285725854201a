namespace PowerLint.Program;

/// <summary>
/// Writes a lowered unit as bytes, and reads it back: the same functions, variables and statements, and the same identities
/// within the unit. The bytes are for the machine and the build that wrote them: there is no promise across versions.
/// </summary>
public static class UnitSerializer
{
    /// <summary>Writes a unit.</summary>
    public static byte[] Write(TranslationUnit unit)
    {
        var output = new UnitOutput();
        new UnitWriter(output).Write(unit);
        return output.ToArray();
    }

    /// <summary>Reads a unit.</summary>
    /// <exception cref="InvalidDataException">The bytes are not a unit's.</exception>
    public static TranslationUnit Read(ReadOnlySpan<byte> bytes)
    {
        var input = new UnitInput(bytes.ToArray());
        try
        {
            var unit = new UnitLoader(input).Load();
            return input.IsAtEnd ? unit : throw new InvalidDataException("Bytes follow the unit.");
        }
        catch (Exception error)
            when (error
                    is ArgumentException
                        or InvalidCastException
                        or IndexOutOfRangeException
                        or NullReferenceException
                        or OverflowException
            )
        {
            throw new InvalidDataException("The bytes are not a unit's.", error);
        }
    }
}
