using System.Runtime.InteropServices;

namespace PowerLint.Frontend;

/// <summary>
/// Lets the library recover from running out of stack. It catches its own crashes, but its handler runs on the stack that has just
/// run out; the runtime gives every thread a second one for such handlers, and the handler only has to be told to use it.
/// </summary>
internal static unsafe class CrashRecovery
{
    // struct sigaction of the GNU C library on 64-bit Linux: handler, 128 bytes of mask, flags, restorer.
    private const int ActionBytes = 152;
    private const int FlagsOffset = 136;
    private const int OnAlternateStack = 0x08000000;

    private static readonly int[] Signals =
    [
        7, // SIGBUS
        11, // SIGSEGV
    ];

    private static readonly Lazy<bool> Done = new(Install);

    /// <summary>To be called once the library has put its handlers in place, which it does with its first index.</summary>
    public static void UseAlternateStack() => _ = Done.Value;

    private static bool Install()
    {
        if (!OperatingSystem.IsLinux() || RuntimeInformation.ProcessArchitecture != Architecture.X64)
        {
            return false;
        }

        if (
            !NativeLibrary.TryLoad("libc.so.6", out var libc)
            || !NativeLibrary.TryGetExport(libc, "sigaction", out var address)
        )
        {
            return false;
        }

        var sigaction = (delegate* unmanaged<int, byte*, byte*, int>)address;
        var action = stackalloc byte[ActionBytes];
        foreach (var signal in Signals)
        {
            if (sigaction(signal, null, action) == 0)
            {
                *(int*)(action + FlagsOffset) |= OnAlternateStack;
                _ = sigaction(signal, action, null);
            }
        }

        return true;
    }
}
