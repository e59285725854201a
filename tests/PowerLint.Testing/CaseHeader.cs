using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using PowerLint.Devices;
using PowerLint.Rules;

namespace PowerLint.Testing;

/// <summary>
/// What a case says of itself in the comments at its top: <c>// device: atmega328p</c>, <c>// flags: -DF_CPU=1000000UL</c>,
/// <c>// compiler: arm-none-eabi-gcc</c> (where it is not the usual one of the device),
/// <c>// board: PD2: { pull: down, ohms: 10000 }</c>, <c>// package: tqfp32</c>, <c>// option: LFUSE.CKOUT = 0</c>,
/// <c>// hertz: 32768</c>, <c>// rules: floating-pin, polling-wait</c> or <c>all</c> (which rules' findings are compared).
/// </summary>
public sealed partial record CaseHeader
{
    /// <summary>The device.</summary>
    public required string Device { get; init; }

    /// <summary>The compiler's name, or null for the usual one with its usual flags for the device.</summary>
    public string? Compiler { get; init; }

    /// <summary>Compiler flags.</summary>
    public ImmutableArray<string> Flags { get; init; } = [];

    /// <summary>The board.</summary>
    public BoardFacts Board { get; init; } = BoardFacts.None;

    /// <summary>Fuses that differ from the factory's.</summary>
    public ImmutableDictionary<string, ulong> Options { get; init; } = ImmutableDictionary<string, ulong>.Empty;

    /// <summary>The CPU clock that the configuration gives, or null.</summary>
    public double? Hertz { get; init; }

    /// <summary>Rules whose findings are compared; empty for the folder's own, null for all.</summary>
    public ImmutableArray<string>? Rules { get; init; } = [];

    /// <summary>How the case is compiled: the compiler's name, then its flags.</summary>
    /// <param name="device">The device: its family's own register headers, where it has some, are found.</param>
    public ImmutableArray<string> CommandLine(DeviceModel device)
    {
        ArgumentNullException.ThrowIfNull(device);
        var include = RepositoryRoot.Combine("tests", "families", device.Family, "include");
        return
        [
            .. Compiler is { } given ? [given] : UsualCompiler(device),
            "-Os",
            .. Directory.Exists(include) ? ["-I" + include] : Array.Empty<string>(),
            .. Flags,
        ];
    }

    private static string[] UsualCompiler(DeviceModel device) =>
        device.Core switch
        {
            "msp430" => ["msp430-gcc", "-mmcu=" + device.Name],
            var core when core.StartsWith("cortex-", StringComparison.Ordinal) =>
            [
                "arm-none-eabi-gcc",
                "-mcpu=" + core.Replace("+", "plus", StringComparison.Ordinal),
                "-mthumb",
            ],
            _ => ["avr-gcc", "-mmcu=" + device.Name],
        };

    /// <summary>Reads the comments at the top of a text.</summary>
    /// <exception cref="FormatException">A line is not understood, or no device is given.</exception>
    public static CaseHeader Read(string text, string name)
    {
        var header = new CaseHeader { Device = "" };
        foreach (var line in text.Split('\n'))
        {
            var match = Directive().Match(line);
            if (!match.Success)
            {
                if (line.Trim().Length > 0 && !line.StartsWith("//", StringComparison.Ordinal))
                {
                    break;
                }

                continue;
            }

            header = header.With(match.Groups["key"].Value, match.Groups["value"].Value.Trim(), name);
        }

        return header.Device.Length > 0
            ? header
            : throw new FormatException($"{name}: the first comment must name the device: // device: atmega328p");
    }

    private CaseHeader With(string key, string value, string name) =>
        key switch
        {
            "device" => this with { Device = value },
            "compiler" => this with { Compiler = value },
            "flags" => this with { Flags = Flags.AddRange(value.Split(' ', StringSplitOptions.RemoveEmptyEntries)) },
            "package" => this with { Board = Board with { Package = value } },
            "board" => this with { Board = WithPin(Board, value, name) },
            "hertz" => this with { Hertz = double.Parse(value, CultureInfo.InvariantCulture) },
            "option" => this with
            {
                Options = Options.SetItem(Sides(value, name).Left, Number(Sides(value, name).Right)),
            },
            _ => this with
            {
                Rules = string.Equals(value, "all", StringComparison.Ordinal)
                    ? null
                    : [.. value.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries)],
            },
        };

    private static (string Left, string Right) Sides(string value, string name)
    {
        var sides = value.Split('=', 2, StringSplitOptions.TrimEntries);
        return sides.Length == 2
            ? (sides[0], sides[1])
            : throw new FormatException($"{name}: no '=' in option: {value}");
    }

    private static ulong Number(string text) =>
        text.StartsWith("0x", StringComparison.OrdinalIgnoreCase)
            ? ulong.Parse(text.AsSpan(2), NumberStyles.HexNumber, CultureInfo.InvariantCulture)
            : ulong.Parse(text, CultureInfo.InvariantCulture);

    private static BoardFacts WithPin(BoardFacts board, string value, string name)
    {
        var match = BoardPinLine().Match(value);
        if (!match.Success)
        {
            throw new FormatException($"{name}: write // board: PD2: {{ pull: down, ohms: 10000 }}, not '{value}'");
        }

        if (match.Groups["entries"].Value.Trim() is "fitted: yes" or "fitted: no")
        {
            var isFitted = match.Groups["entries"].Value.Contains("yes", StringComparison.Ordinal);
            return board with
            {
                FittedRegulators = board.FittedRegulators.SetItem(match.Groups["pin"].Value, isFitted),
            };
        }

        var pin = new BoardPin();
        foreach (var entry in match.Groups["entries"].Value.Split(',', StringSplitOptions.TrimEntries))
        {
            var (key, text) = entry.Split(':', 2, StringSplitOptions.TrimEntries) is [var left, var right]
                ? (left, right.Trim('"'))
                : throw new FormatException($"{name}: no ':' in '{entry}'");
            pin = key switch
            {
                "load" => pin with { Load = text },
                "active" => pin with { Active = Level(text) },
                "milliamps" => pin with { Milliamps = double.Parse(text, CultureInfo.InvariantCulture) },
                "pull" => pin with
                {
                    Pull = string.Equals(text, "up", StringComparison.Ordinal) ? WireLevel.High : WireLevel.Low,
                },
                "ohms" => pin with { PullOhms = double.Parse(text, CultureInfo.InvariantCulture) },
                "driven" => pin with { Driven = Level(text) },
                "connected" => pin with { IsConnected = !string.Equals(text, "no", StringComparison.Ordinal) },
                _ => throw new FormatException($"{name}: the board knows no '{key}'"),
            };
        }

        return board with
        {
            Pins = board.Pins.SetItem(match.Groups["pin"].Value, pin),
        };

        static WireLevel Level(string text) =>
            text switch
            {
                "high" => WireLevel.High,
                "low" => WireLevel.Low,
                _ => WireLevel.Either,
            };
    }

    [GeneratedRegex(
        @"^//\s*(?<key>device|compiler|flags|package|board|hertz|option|rules):(?<value>.*)$",
        RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Directive();

    [GeneratedRegex(@"^(?<pin>\S+):\s*\{(?<entries>[^}]*)\}$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex BoardPinLine();
}
