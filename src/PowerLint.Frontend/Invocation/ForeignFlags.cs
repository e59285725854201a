namespace PowerLint.Frontend;

/// <summary>
/// Puts the flags of compilers that are not driven like GCC into GCC's words: those of other embedded compilers. What only
/// concerns code generation, listings and diagnostics is dropped without a word; what is translated is told once.
/// </summary>
internal static class ForeignFlags
{
    private static readonly HashSet<string> Compilers = new(StringComparer.Ordinal)
    {
        "iccarm",
        "iccavr",
        "icc430",
        "iccriscv",
        "armcc",
        "armclang",
        "cl430",
        "armcl",
    };

    // Flags whose value is the next word, or follows '='.
    private static readonly Dictionary<string, string> WithValue = new(StringComparer.Ordinal)
    {
        ["--preinclude"] = "-include",
        ["--define"] = "-D",
        ["--undefine"] = "-U",
        ["--include_path"] = "-I",
        ["--system_include_dir"] = "-isystem",
        ["-J"] = "-isystem",
    };

    private static readonly Dictionary<string, string> Alone = new(StringComparer.Ordinal)
    {
        ["--c89"] = "-std=gnu89",
        ["--c90"] = "-std=gnu90",
        ["--c99"] = "-std=gnu99",
        ["--c11"] = "-std=gnu11",
        ["--char_is_signed"] = "-fsigned-char",
        ["--char_is_unsigned"] = "-funsigned-char",
        ["--signed_chars"] = "-fsigned-char",
        ["--unsigned_chars"] = "-funsigned-char",
        ["--enum_is_int"] = "-fno-short-enums",
        ["--thumb"] = "-mthumb",
        ["--arm"] = "-marm",
    };

    // Listings, libraries, diagnostics: dropped with the word that follows.
    private static readonly HashSet<string> DroppedWithValue = new(StringComparer.Ordinal)
    {
        "--dlib_config",
        "--diag_suppress",
        "--diag_remark",
        "--diag_warning",
        "--diag_error",
        "--depend",
        "--depend_format",
        "--omf_browse",
        "--dependencies",
        "--fpu",
        "--endian",
        "--apcs",
        "-lCN",
        "-lC",
        "-lA",
        "-lB",
        "--output",
        "--predef_macros",
        "--lib_config",
    };

    private static readonly string[] DroppedPrefixes =
    [
        "--no_",
        "--diag_",
        "--fpu=",
        "--endian=",
        "--apcs=",
        "--dlib_config=",
        "--depend",
        "--omf_browse=",
        "--dependencies=",
        "--debug",
        "--split_sections",
        "--interwork",
        "--silent",
        "--use_",
        "--vla",
        "--gnu",
        "--strict",
        "--multibyte_chars",
        "--printf_support",
        "--opt_",
        "--display_error_number",
        "--abi=",
        "--data_model",
        "--code_model",
        "--core=",
        "--double=",
        "--mfc",
        "--eec++",
        "--aeabi",
        "--guard_calls",
        "--section=",
        "-z",
        "-v",
        "-x",
    ];

    // Words for the language extensions, so that the parser gets past them.
    private static readonly string[] Words =
    [
        "-D__root=__attribute__((used))",
        "-D__no_init=__attribute__((section(\".noinit\")))",
        "-D__ramfunc=",
        "-D__irq=",
        "-D__fiq=",
        "-D__arm=",
        "-D__thumb=",
        "-D__noreturn=__attribute__((noreturn))",
        "-D__flash=",
        "-D__monitor=",
        "-D__task=",
        "-D__nested=",
        "-D__intrinsic=",
        "-D__value_in_regs=",
    ];

    /// <summary>Whether a compiler is driven in one of these ways.</summary>
    public static bool IsForeign(string? compiler) => compiler is not null && Compilers.Contains(BareName(compiler));

    /// <summary>The compiler's name, without folder and extension.</summary>
    public static string BareName(string compiler)
    {
        var name = Path.GetFileName(compiler.Replace('\\', '/'));
        return name.EndsWith(".exe", StringComparison.OrdinalIgnoreCase) ? name[..^4].ToLowerInvariant() : name;
    }

    /// <summary>The flags in GCC's words; those of other compilers as they are.</summary>
    /// <param name="compiler">The compiler as written, or null.</param>
    /// <param name="flags">Its flags, response files taken in.</param>
    /// <param name="notices">Told what was translated.</param>
    public static IReadOnlyList<string> Translate(string? compiler, IReadOnlyList<string> flags, NoticeList notices)
    {
        if (!IsForeign(compiler))
        {
            return flags;
        }

        var name = BareName(compiler!);
        var result = new List<string>();
        for (var i = 0; i < flags.Count; i++)
        {
            var flag = flags[i];
            var equals = flag.StartsWith("--", StringComparison.Ordinal)
                ? flag.IndexOf('=', StringComparison.Ordinal)
                : -1;
            var key = equals < 0 ? flag : flag[..equals];
            var next = i + 1 < flags.Count ? flags[i + 1] : "";
            if (WithValue.TryGetValue(key, out var spelled))
            {
                Add(flag, spelled, equals < 0 ? next : flag[(equals + 1)..]);
                i += equals < 0 ? 1 : 0;
            }
            else if (Alone.TryGetValue(flag, out spelled))
            {
                Add(flag, spelled);
            }
            else if (key is "--cpu")
            {
                var processor = equals < 0 ? next : flag[(equals + 1)..];
                i += equals < 0 ? 1 : 0;
                Add($"--cpu={processor}", Processor(name, processor));
            }
            else if (name.StartsWith("icc", StringComparison.Ordinal) && flag is "-e" or "-r" or "-s")
            {
                // Language extensions, debug information, silence; GCC's -e and -s mean other things.
            }
            else if (DroppedWithValue.Contains(flag))
            {
                i += next.StartsWith('-') ? 0 : 1;
            }
            else if (!Array.Exists(DroppedPrefixes, prefix => flag.StartsWith(prefix, StringComparison.Ordinal)))
            {
                result.Add(flag);
            }
        }

        return [.. Words, .. result];

        void Add(string from, params string[] to)
        {
            result.AddRange(to);
            notices.Add(
                "flag-translated",
                $"Flags of {name} were translated for the parser",
                $"{from} as {string.Join(' ', to)}"
            );
        }
    }

    private static string Processor(string compiler, string processor)
    {
        var name = processor.ToLowerInvariant();
        return compiler switch
        {
            // The AVR compiler writes m328p for the ATmega328P, tiny85 for the ATtiny85.
            "iccavr" when name.StartsWith("tiny", StringComparison.Ordinal) => $"-mmcu=at{name}",
            "iccavr" when name.StartsWith("xm", StringComparison.Ordinal) => $"-mmcu=atxmega{name[2..]}",
            "iccavr" when name.Length > 1 && name[0] == 'm' && char.IsDigit(name[1]) => $"-mmcu=atmega{name[1..]}",
            "iccavr" or "icc430" => $"-mmcu={name}",
            // Cortex-M4.fp and the like: the extension does not matter here.
            _ => $"-mcpu={name.Split('.')[0]}",
        };
    }
}
