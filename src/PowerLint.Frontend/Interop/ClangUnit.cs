using System.Runtime.InteropServices;
using PowerLint.Program;

namespace PowerLint.Frontend;

/// <summary>A parsed translation unit. Cursors and types of it must not be used once it is disposed.</summary>
internal sealed unsafe class ClangUnit : IDisposable
{
    private const uint KeepGoing = 0x200;

    private nint _index;

    private ClangUnit(nint index, nint handle)
    {
        _index = index;
        Handle = handle;
    }

    public nint Handle { get; private set; }

    public ClangCursor Root => new(LibClang.clang_getTranslationUnitCursor(Handle));

    /// <summary>Parses one file.</summary>
    /// <param name="path">The main file.</param>
    /// <param name="arguments">Clang driver flags, without the compiler and the file.</param>
    /// <param name="unsaved">Files that exist only in memory.</param>
    /// <param name="unit">The unit, or null.</param>
    /// <returns>Zero, or libclang's error code.</returns>
    public static int TryParse(
        string path,
        IReadOnlyList<string> arguments,
        IReadOnlyList<UnsavedFile> unsaved,
        out ClangUnit? unit
    )
    {
        NativeLibraryLoader.EnsureLoaded();
        var pins = new List<GCHandle>();
        try
        {
            var index = LibClang.clang_createIndex(0, 0);
            CrashRecovery.UseAlternateStack();
            var pointers = new nint[arguments.Count];
            for (var i = 0; i < pointers.Length; i++)
            {
                pointers[i] = Pin(NativeString.Terminated(arguments[i]));
            }

            var files = new CXUnsavedFile[unsaved.Count];
            for (var i = 0; i < files.Length; i++)
            {
                files[i] = new CXUnsavedFile
                {
                    Filename = Pin(NativeString.Terminated(unsaved[i].Path)),
                    Contents = Pin(unsaved[i].Content),
                    Length = (nuint)unsaved[i].Content.Length,
                };
            }

            nint handle = 0;
            int error;
            fixed (nint* argumentPointer = pointers)
            fixed (CXUnsavedFile* filePointer = files)
            {
                error = LibClang.clang_parseTranslationUnit2(
                    index,
                    (byte*)Pin(NativeString.Terminated(path)),
                    (byte**)argumentPointer,
                    pointers.Length,
                    filePointer,
                    (uint)files.Length,
                    KeepGoing,
                    &handle
                );
            }

            if (error != 0 || handle == 0)
            {
                LibClang.clang_disposeIndex(index);
                unit = null;
                return error == 0 ? 1 : error;
            }

            unit = new ClangUnit(index, handle);
            return 0;
        }
        finally
        {
            foreach (var pin in pins)
            {
                pin.Free();
            }
        }

        nint Pin(byte[] bytes)
        {
            var pin = GCHandle.Alloc(bytes, GCHandleType.Pinned);
            pins.Add(pin);
            return pin.AddrOfPinnedObject();
        }
    }

    /// <summary>The target's triple.</summary>
    public string Triple
    {
        get
        {
            var info = LibClang.clang_getTranslationUnitTargetInfo(Handle);
            var triple = NativeString.Take(LibClang.clang_TargetInfo_getTriple(info));
            LibClang.clang_TargetInfo_dispose(info);
            return triple;
        }
    }

    /// <summary>Width of a data pointer in bits.</summary>
    public int PointerBits
    {
        get
        {
            var info = LibClang.clang_getTranslationUnitTargetInfo(Handle);
            var bits = LibClang.clang_TargetInfo_getPointerWidth(info);
            LibClang.clang_TargetInfo_dispose(info);
            return bits;
        }
    }

    /// <summary>The bytes of a file as the parser saw them.</summary>
    public ReadOnlySpan<byte> Contents(nint file)
    {
        nuint size = 0;
        var bytes = LibClang.clang_getFileContents(Handle, file, &size);
        return bytes is null ? default : new ReadOnlySpan<byte>(bytes, (int)size);
    }

    /// <summary>The parser's messages.</summary>
    public IEnumerable<(CXDiagnosticSeverity Severity, string Text, CXSourceLocation Location)> Diagnostics()
    {
        var count = LibClang.clang_getNumDiagnostics(Handle);
        for (var i = 0u; i < count; i++)
        {
            var diagnostic = LibClang.clang_getDiagnostic(Handle, i);
            yield return (
                LibClang.clang_getDiagnosticSeverity(diagnostic),
                NativeString.Take(LibClang.clang_getDiagnosticSpelling(diagnostic)),
                LibClang.clang_getDiagnosticLocation(diagnostic)
            );
            LibClang.clang_disposeDiagnostic(diagnostic);
        }
    }

    /// <summary>The files that the unit is made of.</summary>
    public List<nint> Files()
    {
        var files = new List<nint>();
        var handle = GCHandle.Alloc(files);
        try
        {
            LibClang.clang_getInclusions(Handle, &AddFile, GCHandle.ToIntPtr(handle));
        }
        finally
        {
            handle.Free();
        }

        return files;
    }

    [UnmanagedCallersOnly]
    private static void AddFile(nint file, CXSourceLocation* stack, uint depth, nint data) =>
        ((List<nint>)GCHandle.FromIntPtr(data).Target!).Add(file);

    /// <summary>The tokens of a stretch of source, macros not expanded.</summary>
    public List<ClangToken> Tokenize(CXSourceRange range)
    {
        CXToken* tokens = null;
        uint count = 0;
        LibClang.clang_tokenize(Handle, range, &tokens, &count);
        var result = new List<ClangToken>((int)count);
        for (var i = 0u; i < count; i++)
        {
            result.Add(
                new ClangToken(
                    LibClang.clang_getTokenKind(tokens[i]),
                    NativeString.Take(LibClang.clang_getTokenSpelling(Handle, tokens[i])),
                    LibClang.clang_getTokenExtent(Handle, tokens[i])
                )
            );
        }

        LibClang.clang_disposeTokens(Handle, tokens, count);
        return result;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (Handle != 0)
        {
            LibClang.clang_disposeTranslationUnit(Handle);
            LibClang.clang_disposeIndex(_index);
            Handle = 0;
            _index = 0;
        }
    }
}

/// <summary>A file that exists only in memory.</summary>
internal sealed record UnsavedFile(string Path, byte[] Content);

/// <summary>A token of the source as written.</summary>
internal readonly record struct ClangToken(CXTokenKind Kind, string Text, CXSourceRange Range);
