using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>An lvalue: where an object lies and how it is read and written.</summary>
/// <param name="Address">Its address.</param>
/// <param name="Type">Its C type.</param>
/// <param name="Field">The bit-field that it is, or null.</param>
/// <param name="IsDecayed">
/// Whether it is a parameter declared as an array or function: libclang shows the type as written, the object is a pointer.
/// </param>
internal readonly record struct Place(Expression Address, ClangType Type, BitField? Field, bool IsDecayed = false)
{
    /// <summary>Whether an access to it is volatile.</summary>
    public bool IsVolatile => !IsDecayed && Type.Canonical.IsVolatile;

    /// <summary>The type of the object.</summary>
    public CType ObjectType(TypeLowering types) => IsDecayed ? types.Pointer : types.Lower(Type);
}
