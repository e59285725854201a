using System.Runtime.InteropServices;
using System.Text;

namespace PowerLint.Frontend;

/// <summary>Strings across the border: libclang's out, UTF-8 in.</summary>
internal static unsafe class NativeString
{
    /// <summary>Takes a libclang string over and disposes it.</summary>
    public static string Take(CXString text)
    {
        var bytes = LibClang.clang_getCString(text);
        var result = bytes is null ? "" : Marshal.PtrToStringUTF8((nint)bytes) ?? "";
        LibClang.clang_disposeString(text);
        return result;
    }

    /// <summary>A NUL-terminated UTF-8 copy.</summary>
    public static byte[] Terminated(string text)
    {
        var bytes = new byte[Encoding.UTF8.GetByteCount(text) + 1];
        Encoding.UTF8.GetBytes(text, bytes);
        return bytes;
    }
}
