using System.Globalization;
using PowerLint.Analysis;
using PowerLint.Devices;
using PowerLint.Frontend;
using PowerLint.Program;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>
/// Firmware for a 32-bit part with a register layout that is common practice: <c>tests/arm-layout</c>. Its first comment may name
/// further files of the image (<c>// files: driver.c</c>) and a limit that the run must tell (<c>// limit: recursion</c>).
/// <c>// state: GPIOA_MODER = 0xFFFBD7AF, CORE.INTERRUPTS_ON = 0b?</c> stands on the line of a resting point; a <c>?</c> is a bit that
/// must not be known. <c>// no point here</c> asks for none.
/// </summary>
public sealed class ArmLayoutTests
{
    private static readonly string Folder = RepositoryRoot.Combine("tests", "arm-layout");

    private static readonly Lazy<DeviceModel> Device = new(() =>
        DeviceCatalog.Open(Path.Combine(Folder, "devices")).Load("layout32")
    );

    public static TheoryData<string> Names =>
        [
            .. Directory
                .EnumerateFiles(Path.Combine(Folder, "firmware"), "*.c")
                .Where(file => File.ReadAllText(file).Contains("// state:", StringComparison.Ordinal))
                .Select(file => Path.GetFileName(file))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Names))]
    public void Registers_are_what_the_marks_say(string name)
    {
        var main = Path.Combine(Folder, "firmware", name);
        string[] files = [main, .. Headed(main, "files").Select(file => Path.Combine(Folder, "firmware", file))];
        var result = Run(files);
        var differences = new List<string>();
        foreach (var file in files)
        {
            var lines = File.ReadAllLines(file);
            for (var i = 0; i < lines.Length; i++)
            {
                var points = result
                    .RestingPoints.Where(point =>
                        point.Range.Line == i + 1
                        && string.Equals(point.Range.File.Path, file, StringComparison.Ordinal)
                    )
                    .ToArray();
                differences.AddRange(Differences(result.Device, lines[i], points).Select(d => $"{name}:{i + 1}: {d}"));
            }
        }

        Assert.True(differences.Count == 0, string.Join('\n', differences));
        Assert.Equal(
            Headed(main, "limit"),
            result.Limits.Select(limit => limit.Id).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)
        );
    }

    private static AnalysisResult Run(string[] files)
    {
        var read = FirmwareReader.Read(
            new ReadRequest
            {
                Files = files,
                Flags = ["arm-none-eabi-gcc", "-mcpu=cortex-m0plus", "-mthumb", "-Os"],
                DeviceName = "layout32",
                WorkingDirectory = Folder,
                AsksCompilers = false,
            },
            TestContext.Current.CancellationToken
        );
        Assert.Null(read.Failure);
        Assert.Empty(read.Errors);
        Assert.Empty(read.Gaps);
        var image = ImageLinker.Link(read.Units);
        Assert.NotNull(image);
        return ImageAnalyzer.Run(image, Device.Value, new AnalysisOptions(), TestContext.Current.CancellationToken);
    }

    private static IEnumerable<string> Differences(DeviceModel device, string line, RestingPoint[] points)
    {
        if (line.Contains("// no point here", StringComparison.Ordinal))
        {
            return points.Select(_ => "there is a resting point");
        }

        var at = line.IndexOf("// state:", StringComparison.Ordinal);
        if (at < 0)
        {
            return [];
        }

        var marks = line[(at + 9)..].Split(',', StringSplitOptions.TrimEntries);
        return points.Length == 0
            ? ["there is no resting point"]
            : points.SelectMany(point => marks.Select(mark => Difference(device, mark, point.State)).OfType<string>());
    }

    private static string? Difference(DeviceModel device, string mark, StateAtPoint state)
    {
        var sides = mark.Split('=', StringSplitOptions.TrimEntries);
        var whole = device.Registers.SingleOrDefault(r => string.Equals(r.Name, sides[0], StringComparison.Ordinal));
        var dot = sides[0].LastIndexOf('.');
        string[] names = whole is not null || dot < 0 ? [sides[0]] : [sides[0][..dot], sides[0][(dot + 1)..]];
        var register = device.Registers.Single(r => string.Equals(r.Name, names[0], StringComparison.Ordinal));
        var bits = state.Read(register);
        var width = register.WidthBits;
        if (names.Length > 1)
        {
            var field = register.Fields[names[1]];
            bits = new KnownBits(bits.Known >> field.LowBit, bits.Value >> field.LowBit);
            width = field.WidthBits;
        }

        var found = string.Concat(
            Enumerable
                .Range(0, width)
                .Reverse()
                .Select(bit =>
                    (bits.Known >> bit & 1) == 0 ? '?'
                    : (bits.Value >> bit & 1) == 0 ? '0'
                    : '1'
                )
        );
        var wanted = sides[1].StartsWith("0b", StringComparison.Ordinal)
            ? sides[1][2..].Replace("_", "", StringComparison.Ordinal).PadLeft(width, '0')
            : Number(sides[1]).ToString($"B{width}", CultureInfo.InvariantCulture);
        return string.Equals(found, wanted, StringComparison.Ordinal) ? null : $"{mark}: is 0b{found}";
    }

    private static ulong Number(string text) =>
        text.StartsWith("0x", StringComparison.Ordinal)
            ? ulong.Parse(text.AsSpan(2), NumberStyles.HexNumber, CultureInfo.InvariantCulture)
            : ulong.Parse(text, CultureInfo.InvariantCulture);

    private static IEnumerable<string> Headed(string file, string key) =>
        File.ReadLines(file)
            .TakeWhile(line => line.StartsWith("//", StringComparison.Ordinal))
            .Where(line => line.StartsWith($"// {key}:", StringComparison.Ordinal))
            .SelectMany(line => line[(key.Length + 4)..].Split([' ', ','], StringSplitOptions.RemoveEmptyEntries));
}
