using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace PowerLint.Frontend;

/// <summary>Tells the parser the part, or, where it does not know it, what it would make of it.</summary>
internal static partial class PartFlags
{
    private static readonly ConcurrentDictionary<string, bool> KnownParts = new(StringComparer.Ordinal);

    public static IReadOnlyList<string> For(
        TargetSelection target,
        string? part,
        IReadOnlyList<string> flags,
        string? cacheFolder,
        NoticeList notices
    )
    {
        switch (target.Architecture)
        {
            case "avr" when part is null:
                notices.Add(
                    "part-not-given",
                    "No part was named (-mmcu=…, or --device): headers that ask for it will not find their registers."
                );
                return ["-Xclang", "-target-cpu", "-Xclang", "avr5"];
            case "avr":
                return AvrFlags(part, cacheFolder);
            case "msp430" when part is not null:
                // The headers choose by __MSP430F2012__ and the like.
                return [$"-D{MacroOf(target, part)}=1"];
            case "arm":
                var hasProcessor = flags.Any(flag =>
                    flag.StartsWith("-mcpu=", StringComparison.Ordinal)
                    || flag.StartsWith("-march=", StringComparison.Ordinal)
                );
                // The bare-metal ABI gives an enumeration the smallest type that holds it.
                return hasProcessor ? ["-fshort-enums"] : ["-mcpu=cortex-m3", "-mthumb", "-fshort-enums"];
            default:
                return [];
        }
    }

    /// <summary>The macro that the target's compiler defines for a part; null where it defines none.</summary>
    internal static string? MacroOf(TargetSelection target, string part) =>
        target.Architecture switch
        {
            "avr" => AvrMacro(part),
            "msp430" => $"__{part.ToUpperInvariant()}__",
            _ => null,
        };

    /// <summary>The macro by which headers know a part: <c>__AVR_ATmega328P__</c>.</summary>
    internal static string AvrMacro(string part)
    {
        var name = part.ToLowerInvariant();
        foreach (
            var (prefix, spelled) in (ReadOnlySpan<(string, string)>)
                [
                    ("atmega", "ATmega"),
                    ("attiny", "ATtiny"),
                    ("atxmega", "ATxmega"),
                    ("at90", "AT90"),
                    ("avr", "AVR"),
                    ("ata", "ATA"),
                ]
        )
        {
            if (name.StartsWith(prefix, StringComparison.Ordinal))
            {
                return $"__AVR_{spelled}{name[prefix.Length..].ToUpperInvariant()}__";
            }
        }

        return $"__AVR_{part}__";
    }

    private static string[] AvrFlags(string part, string? cacheFolder)
    {
        string[] names =
        [
            $"-D__AVR_DEVICE_NAME__={part}",
            .. HeaderName(part) is { } header ? [$"-D__AVR_DEV_LIB_NAME__={header}"] : Array.Empty<string>(),
        ];
        if (KnownParts.GetOrAdd(part, IsKnown, cacheFolder))
        {
            return [$"-mmcu={part}", .. names];
        }

        return ["-Xclang", "-target-cpu", "-Xclang", AvrFamily(part), $"-D{AvrMacro(part)}=1", .. names];
    }

    /// <summary>
    /// What a part's register header is called after <c>avr/io</c>: headers of parts that are newer than the C library are
    /// found by this name, which the cross compiler defines.
    /// </summary>
    internal static string? HeaderName(string part)
    {
        var name = part.ToLowerInvariant();
        foreach (
            var (prefix, spelled) in (ReadOnlySpan<(string, string)>)
                [("atmega", "m"), ("attiny", "tn"), ("atxmega", "x"), ("avr", "avr")]
        )
        {
            if (name.StartsWith(prefix, StringComparison.Ordinal))
            {
                return spelled + name[prefix.Length..];
            }
        }

        return null;
    }

    // Flash, series and pins: attiny1614, atmega4809.
    [GeneratedRegex(
        "^(attiny(2|4|8|16|32)[012][2467]|atmega(8|16|32|48)0[89])$",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex PerPinControl();

    // The parser refuses the whole command for a part that it does not know. Its answer is kept: a run that finds all units in
    // the cache needs no parser.
    private static bool IsKnown(string part, string? cacheFolder)
    {
        if (cacheFolder is null)
        {
            return AskParser(part);
        }

        var store = new CacheStore(Path.Combine(cacheFolder, "parts"));
        var key = SHA256.HashData([.. ProgramBuild.Stamp, .. Encoding.UTF8.GetBytes(part)]);
        if (store.Read(key) is [var kept])
        {
            return kept != 0;
        }

        var isKnown = AskParser(part);
        store.Write(key, [isKnown ? (byte)1 : (byte)0]);
        return isKnown;
    }

    private static bool AskParser(string part)
    {
        var source = new UnsavedFile("/powerlint-headers/probe.c", []);
        _ = ClangUnit.TryParse(source.Path, ["-target", "avr", $"-mmcu={part}"], [source], out var unit);
        using (unit)
        {
            return unit is not null;
        }
    }

    // The instruction-set families that avr-gcc's documentation lists, by the pattern of the part's name.
    private static string AvrFamily(string part) =>
        part.ToLowerInvariant() switch
        {
            "attiny4" or "attiny5" or "attiny9" or "attiny10" or "attiny20" or "attiny40" => "avrtiny",
            var name when name.StartsWith("atxmega", StringComparison.Ordinal) => "avrxmega6",
            var name when name.StartsWith("avr128", StringComparison.Ordinal) => "avrxmega4",
            var name when name.StartsWith("avr64", StringComparison.Ordinal) => "avrxmega2",
            var name when name.StartsWith("avr", StringComparison.Ordinal) || PerPinControl().IsMatch(name) =>
                "avrxmega3",
            var name when name.StartsWith("attiny", StringComparison.Ordinal) => "avr25",
            var name when name.Contains("2560", StringComparison.Ordinal) => "avr6",
            var name when name.Contains("128", StringComparison.Ordinal) => "avr51",
            var name
                when name.StartsWith("atmega8", StringComparison.Ordinal)
                    || name.StartsWith("atmega4", StringComparison.Ordinal) => "avr4",
            _ => "avr5",
        };
}
