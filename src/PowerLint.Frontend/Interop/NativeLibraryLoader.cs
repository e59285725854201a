using System.Reflection;
using System.Runtime.InteropServices;

namespace PowerLint.Frontend;

/// <summary>Finds the native library, the first time that something must be parsed.</summary>
internal static class NativeLibraryLoader
{
    /// <summary>The name that the imports go by.</summary>
    public const string Name = "libclang";

    private static readonly Lazy<nint> Handle = new(Load);

    /// <summary>Loads the library if it is not loaded yet.</summary>
    /// <exception cref="FrontendUnavailableException">It cannot be loaded.</exception>
    public static void EnsureLoaded() => _ = Handle.Value;

    /// <summary>The library's file, where it lies with the program; null where the system's loader must find it.</summary>
    public static string? File => Array.Find(Places(), System.IO.File.Exists);

    private static nint Load()
    {
        StayOnCallingThread();
        var assembly = typeof(NativeLibraryLoader).Assembly;
        var handle = LoadFrom(assembly);
        NativeLibrary.SetDllImportResolver(assembly, (name, _, _) => name is Name ? handle : 0);
        return handle;
    }

    // The library parses on a thread of its own with 8 MB of stack, which long chains of operators and deep parentheses
    // overflow: on ours they have more. It asks the C run-time's environment, which .NET's copy does not reach.
    private static void StayOnCallingThread()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var libc = NativeLibrary.Load(OperatingSystem.IsMacOS() ? "libSystem.dylib" : "libc.so.6");
        unsafe
        {
            var setenv = (delegate* unmanaged<byte*, byte*, int, int>)NativeLibrary.GetExport(libc, "setenv");
            fixed (byte* name = "LIBCLANG_NOTHREADS\0"u8)
            fixed (byte* value = "1\0"u8)
            {
                _ = setenv(name, value, 1);
            }
        }
    }

    private static nint LoadFrom(Assembly assembly)
    {
        if (NativeLibrary.TryLoad(Name, assembly, searchPath: null, out var handle))
        {
            return handle;
        }

        return File is { } beside && NativeLibrary.TryLoad(beside, out handle)
            ? handle
            : throw new FrontendUnavailableException(
                $"The C parser ({FileName}) could not be loaded for {RuntimeInformation.RuntimeIdentifier}. "
                    + "Install PowerLint again, or run it on 64-bit Linux."
            );
    }

    private static string FileName => OperatingSystem.IsWindows() ? "libclang.dll" : "libclang.so";

    private static string[] Places() =>
        [
            Path.Combine(AppContext.BaseDirectory, FileName),
            Path.Combine(
                AppContext.BaseDirectory,
                "runtimes",
                RuntimeInformation.RuntimeIdentifier,
                "native",
                FileName
            ),
        ];
}

/// <summary>The C parser cannot be used on this machine.</summary>
public sealed class FrontendUnavailableException(string message) : Exception(message);
