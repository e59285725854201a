namespace PowerLint.Frontend;

/// <summary>How one file is compiled.</summary>
/// <param name="Directory">The folder that the compiler runs in.</param>
/// <param name="File">The source file, absolute.</param>
/// <param name="Compiler">The compiler as written, or null.</param>
/// <param name="Flags">Its flags, without the compiler; the file may be among them.</param>
internal sealed record CompileCommand(string Directory, string File, string? Compiler, IReadOnlyList<string> Flags)
{
    /// <summary>The object file as written, or null.</summary>
    public string? Output { get; init; }

    /// <summary>The build target that the object file belongs to, or null where the build does not tell.</summary>
    public string? Target { get; init; }

    /// <summary>Whether the file can be parsed; headers and assembly cannot.</summary>
    public bool IsC => IsPlainC || IsCPlusPlus;

    /// <summary>Whether the file is C++.</summary>
    public bool IsCPlusPlus => Path.GetExtension(File) is ".cpp" or ".cc" or ".cxx" or ".c++" or ".C" or ".ino";

    /// <summary>Whether the file is assembly.</summary>
    public bool IsAssembly => Path.GetExtension(File) is ".s" or ".S" or ".asm" or ".s43" or ".s90" or ".sx";

    private bool IsPlainC => Path.GetExtension(File) is ".c" or ".i";
}
