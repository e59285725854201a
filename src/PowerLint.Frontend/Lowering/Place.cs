using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>An lvalue: where an object lies and how it is read and written.</summary>
/// <param name="Address">Its address.</param>
/// <param name="Type">Its C type.</param>
/// <param name="Field">The bit-field that it is, or null.</param>
internal readonly record struct Place(Expression Address, ClangType Type, BitField? Field)
{
    /// <summary>Whether an access to it is volatile.</summary>
    public bool IsVolatile => Type.Canonical.IsVolatile;
}
