using System.Xml.Linq;
using PowerLint.Frontend;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>The binding against the native library itself: its version, and the names that it gives the numbers.</summary>
public sealed class InteropTests
{
    public InteropTests() => NativeLibraryLoader.EnsureLoaded();

    [Fact]
    public void The_library_is_of_the_version_that_the_binding_was_written_for()
    {
        var wanted = XDocument
            .Load(RepositoryRoot.Combine("Directory.Packages.props"))
            .Descendants("PackageVersion")
            .Single(element => element.Attribute("Include")?.Value is "libclang.runtime.linux-x64")
            .Attribute("Version")!
            .Value;
        Assert.Contains(
            $"version {wanted}",
            NativeString.Take(LibClang.clang_getClangVersion()),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Kinds_of_cursors_have_the_numbers_of_the_library()
    {
        // The library spells some of its kinds otherwise than its header names them.
        var otherwise = new Dictionary<CXCursorKind, string>
        {
            [CXCursorKind.BoolLiteralExpr] = "CXXBoolLiteralExpr",
            [CXCursorKind.NullPointerLiteralExpr] = "CXXNullPtrLiteralExpr",
            [CXCursorKind.AnnotateAttr] = "attribute(annotate)",
            [CXCursorKind.AsmLabelAttr] = "asm label",
            [CXCursorKind.PackedAttr] = "attribute(packed)",
            [CXCursorKind.AlignedAttr] = "attribute(aligned)",
            [CXCursorKind.MacroDefinition] = "macro definition",
            [CXCursorKind.MacroExpansion] = "macro expansion",
            [CXCursorKind.InclusionDirective] = "inclusion directive",
        };
        foreach (var kind in Enum.GetValues<CXCursorKind>())
        {
            Assert.Equal(
                otherwise.GetValueOrDefault(kind, kind.ToString()),
                NativeString.Take(LibClang.clang_getCursorKindSpelling(kind))
            );
        }
    }

    [Fact]
    public void Kinds_of_types_have_the_numbers_of_the_library()
    {
        var otherwise = new Dictionary<CXTypeKind, string>
        {
            [CXTypeKind.CharU] = "Char_U",
            [CXTypeKind.CharS] = "Char_S",
        };
        foreach (var kind in Enum.GetValues<CXTypeKind>())
        {
            Assert.Equal(
                otherwise.GetValueOrDefault(kind, kind.ToString()),
                NativeString.Take(LibClang.clang_getTypeKindSpelling(kind))
            );
        }
    }

    [Fact]
    public void Operators_have_the_numbers_of_the_library()
    {
        var binary = Enum.GetValues<CXBinaryOperatorKind>()
            .Skip(1)
            .Select(kind => NativeString.Take(LibClang.clang_getBinaryOperatorKindSpelling(kind)));
        Assert.Equal(
            "* / % + - << >> <=> < > <= >= == != & ^ | && || = *= /= %= += -= <<= >>= &= ^= |= ,",
            string.Join(' ', binary)
        );
        var unary = Enum.GetValues<CXUnaryOperatorKind>()
            .Skip(1)
            .Select(kind => NativeString.Take(LibClang.clang_getUnaryOperatorKindSpelling(kind)));
        Assert.Equal("++ -- ++ -- & * + - ~ ! __real __imag __extension__", string.Join(' ', unary));
    }
}
