namespace PowerLint.Frontend;

/// <summary>How one file is compiled.</summary>
/// <param name="Directory">The folder that the compiler runs in.</param>
/// <param name="File">The source file, absolute.</param>
/// <param name="Compiler">The compiler as written, or null.</param>
/// <param name="Flags">Its flags, without the compiler; the file may be among them.</param>
internal sealed record CompileCommand(string Directory, string File, string? Compiler, IReadOnlyList<string> Flags)
{
    /// <summary>Whether the file is C; headers, assembly and C++ are not.</summary>
    public bool IsC => Path.GetExtension(File) is ".c" or ".C" or ".i";
}
