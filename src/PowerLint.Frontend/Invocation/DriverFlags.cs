namespace PowerLint.Frontend;

/// <summary>
/// Translates the flags of a cross build. Only flags that are known to change what the source means are passed on: the
/// firmware is not trusted, and the parser must not be told to load or run anything.
/// </summary>
internal sealed class DriverFlags
{
    private static readonly string[] KeptWithValue =
    [
        "-D",
        "-U",
        "-I",
        "-isystem",
        "-iquote",
        "-idirafter",
        "-include",
        "-imacros",
        "-iprefix",
        "-iwithprefix",
    ];

    private static readonly string[] DroppedWithValue =
    [
        "-o",
        "-MF",
        "-MT",
        "-MQ",
        "-MJ",
        "-x",
        "-Xlinker",
        "-Xassembler",
        "-Xpreprocessor",
        "-Xclang",
        "-mllvm",
        "--param",
        "-T",
        "-u",
        "-z",
        "-e",
        "-L",
        "-l",
        "-target",
        "-aux-info",
        "-dumpbase",
        "-dumpdir",
        "-wrapper",
        "-B",
        "-isysroot",
        "--sysroot",
        "-arch",
    ];

    private static readonly HashSet<string> KeptLanguage = new(StringComparer.Ordinal)
    {
        "-ansi",
        "-trigraphs",
        "-undef",
        "-funsigned-char",
        "-fsigned-char",
        "-fno-signed-char",
        "-fno-unsigned-char",
        "-fshort-enums",
        "-fno-short-enums",
        "-fshort-wchar",
        "-fno-short-wchar",
        "-fpack-struct",
        "-fms-extensions",
        "-fgnu89-inline",
        "-fno-builtin",
        "-fcommon",
        "-fno-common",
        "-fno-gnu-keywords",
        "-fdollars-in-identifiers",
        "-mthumb",
        "-marm",
        "-mlittle-endian",
        "-mbig-endian",
        "-msoft-float",
        "-mhard-float",
    };

    private static readonly string[] KeptPrefixes =
    [
        "-std=",
        "-fpack-struct=",
        "-mcpu=",
        "-march=",
        "-mfloat-abi=",
        "-mfpu=",
        "-mabi=",
        "-mtune=",
        "-fmax-",
        "-fms-",
    ];

    // Code generation, warnings, debugging, linking: nothing that changes the meaning of a C file.
    private static readonly string[] SilentPrefixes =
    [
        "-W",
        "-g",
        "-f",
        "-M",
        "-L",
        "-l",
        "-T",
        "-Xlinker",
        "-nostart",
        "-nodefault",
        "-nostdlib",
        "-static",
        "-shared",
        "-specs=",
        "--specs=",
        "-save-temps",
        "--save-temps",
        "-d",
        "-pedantic",
        "--param",
        "--coverage",
        "-z",
        "--sysroot",
        "-isysroot",
        "-B",
        "-no-pie",
        "-pthread",
        "-r",
        "-s",
    ];

    private static readonly HashSet<string> SilentFlags = new(StringComparer.Ordinal)
    {
        "-c",
        "-S",
        "-E",
        "-v",
        "-pipe",
        "-w",
        "-p",
        "-pg",
        "-P",
        "-C",
        "-nostdinc",
        "-nostdlib",
        "-ffreestanding",
        "-fhosted",
    };

    private readonly List<string> _flags = [];
    private readonly SortedSet<string> _dropped = new(StringComparer.Ordinal);
    private readonly List<string> _definitions = [];

    private DriverFlags() { }

    /// <summary>Flags for the parser, without target and header folders of the toolchain.</summary>
    public IReadOnlyList<string> Flags => _flags;

    /// <summary>Flags that may matter but that the parser does not take.</summary>
    public IReadOnlyCollection<string> Dropped => _dropped;

    /// <summary>Macros defined by flags, as <c>NAME=VALUE</c>.</summary>
    public IReadOnlyList<string> Definitions => _definitions;

    /// <summary>Whether the build optimises.</summary>
    public bool Optimizes { get; private set; }

    /// <summary>Translates the flags of a command, response files taken in.</summary>
    public static DriverFlags Translate(IReadOnlyList<string> flags, string architecture)
    {
        var result = new DriverFlags();
        for (var i = 0; i < flags.Count; i++)
        {
            i += result.Take(flags, i, architecture);
        }

        return result;
    }

    // Returns how many further words belong to the flag.
    private int Take(IReadOnlyList<string> flags, int index, string architecture)
    {
        var flag = flags[index];
        if (flag.Length < 2 || flag[0] != '-')
        {
            return 0;
        }

        var value = index + 1 < flags.Count ? flags[index + 1] : "";
        if (Array.IndexOf(DroppedWithValue, flag) >= 0)
        {
            return 1;
        }

        if (Array.IndexOf(KeptWithValue, flag) >= 0)
        {
            _flags.Add(flag);
            _flags.Add(value);
            if (flag is "-D")
            {
                _definitions.Add(value);
            }

            return 1;
        }

        if (flag.StartsWith("-O", StringComparison.Ordinal))
        {
            Optimizes = flag is not "-O0";
        }
        else if (flag.StartsWith("-D", StringComparison.Ordinal))
        {
            _flags.Add(flag);
            _definitions.Add(flag[2..]);
        }
        else if (IsJoined(flag, "-I", "-U", "-isystem", "-iquote", "-idirafter", "-include", "-imacros"))
        {
            _flags.Add(flag);
        }
        else if (
            flag.StartsWith("-mmcu=", StringComparison.Ordinal)
            || flag.StartsWith("--target=", StringComparison.Ordinal)
        )
        {
            return 0;
        }
        else if (architecture is "avr" or "msp430" && flag.StartsWith("-mcpu=", StringComparison.Ordinal))
        {
            _dropped.Add(flag);
        }
        else if (KeptLanguage.Contains(flag) || IsJoined(flag, KeptPrefixes))
        {
            _flags.Add(flag);
        }
        else if (!SilentFlags.Contains(flag) && !IsJoined(flag, SilentPrefixes))
        {
            _dropped.Add(flag);
        }

        return 0;
    }

    private static bool IsJoined(string flag, params ReadOnlySpan<string> prefixes)
    {
        foreach (var prefix in prefixes)
        {
            if (flag.StartsWith(prefix, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }
}
