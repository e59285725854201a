using System.Globalization;
using System.Text;
using System.Xml.Linq;
using System.Xml.XPath;
using PowerLint.Devices;
using PowerLint.Testing;

namespace PowerLint.Tests.Devices;

/// <summary>
/// Imports of CMSIS-SVD files: small ones written for the features of the standard, with their skeletons beside them, and the
/// published ones of <c>/work/shared/svd</c> where that folder is there. What the elements mean is the CMSIS-SVD format's description,
/// version 1.3.
/// </summary>
public sealed class SvdImportTests
{
    private static readonly string Folder = RepositoryRoot.Combine("tests", "svd");

    private static readonly string Published = "/work/shared/svd";

    public static TheoryData<string> Written => FilesIn(Folder);

    public static TheoryData<string> Bad => FilesIn(Path.Combine(Folder, "bad"));

    public static TheoryData<string> All =>
        Directory.Exists(Published) ? [.. FilesIn(Folder).Concat(FilesIn(Published))] : FilesIn(Folder);

    [Theory]
    [MemberData(nameof(Written))]
    public void A_skeleton_is_as_written(string file)
    {
        var skeleton = Import(file);
        var told = string.Concat(skeleton.Notices.Select(notice => $"# {notice}\n"));
        var difference = GoldenFile.Difference(
            Path.ChangeExtension(Path.Combine(Folder, file), ".yaml"),
            skeleton.Text + (told.Length > 0 ? "\n# Told on the terminal:\n" + told : "")
        );
        Assert.True(difference is null, difference);
    }

    [Theory]
    [MemberData(nameof(Bad))]
    public void A_bad_file_is_refused_with_the_line(string file)
    {
        var path = Path.Combine(Folder, "bad", file);
        var exception = Assert.Throws<DeviceModelException>(() => SvdImport.Import(path, file, null));
        var difference = GoldenFile.Difference(
            Path.ChangeExtension(path, ".txt"),
            string.Concat(exception.Errors.Select(error => error + "\n"))
        );
        Assert.True(difference is null, difference);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void A_skeleton_fits_the_schema_and_loads(string file)
    {
        var skeleton = Import(file);
        using (var text = new StringReader(skeleton.Text))
        {
            Assert.Equal("", SchemaCheck.Differences(text));
        }

        var loaded = Load(skeleton.Text);
        Assert.Contains(loaded.Registers, register => register.Fields.Count > 0 || register.Address > 0);
        Assert.Equal(skeleton.Interrupts, loaded.Interrupts.Length);
    }

    // The count is taken from the XML by XPath alone: an element counts as often as its own and its ancestors' dimensions say; one
    // that is derived counts what its origin holds besides its own.
    [Theory]
    [MemberData(nameof(All))]
    public void Every_register_is_in_the_skeleton(string file)
    {
        var skeleton = Import(file);
        var root = XDocument.Load(PathOf(file)).Root!;
        var expected = root.XPathSelectElements("peripherals/peripheral")
            .Sum(peripheral => Dimension(peripheral) * RegistersIn(peripheral, root));
        Assert.Equal(expected, skeleton.Registers);
        var keys = skeleton
            .Text.Split('\n')
            .SkipWhile(line => line is not "registers:")
            .Skip(1)
            .TakeWhile(line => line.StartsWith("  ", StringComparison.Ordinal))
            .Where(line => line.Length > 2 && line[2] is not (' ' or '#'))
            .ToArray();
        var halves = keys.Count(key => key.StartsWith("  LAMP.LONG_HIGH", StringComparison.Ordinal));
        Assert.Equal(expected, keys.Length - halves);
    }

    private static int RegistersIn(XElement owner, XElement root)
    {
        var container = owner.Element("registers") ?? owner;
        var own = container.XPathSelectElements("register|cluster").ToList();
        if (owner.Attribute("derivedFrom")?.Value is { } path)
        {
            var name = path.Split('.')[^1];
            var origin = root.XPathSelectElement($"//{owner.Name.LocalName}[name='{name}']")!;
            var replaced = own.Select(e => e.Element("name")!.Value).ToHashSet(StringComparer.Ordinal);
            own.AddRange(
                (origin.Element("registers") ?? origin)
                    .XPathSelectElements("register|cluster")
                    .Where(e => !replaced.Contains(e.Element("name")!.Value))
            );
        }

        return own.Sum(e => Dimension(e) * (e.Name.LocalName is "register" ? 1 : RegistersIn(e, root)));
    }

    private static int Dimension(XElement element) =>
        element.XPathEvaluate("string(dim)") is string { Length: > 0 } text
            ? text.StartsWith("0x", StringComparison.OrdinalIgnoreCase)
                ? int.Parse(text.AsSpan(2), NumberStyles.HexNumber, CultureInfo.InvariantCulture)
                : int.Parse(text, CultureInfo.InvariantCulture)
            : 1;

    // Addresses and bits as the parts' reference manuals have them: RM0367 (L0x3) sections 7.3.2 and 6.4.1, RM0351 (L4x6) section
    // 6.4.1, RM0444 (G0x1) section 5.4.2, the nRF52840 product specification's GPIO chapter (from memory); register names as there.
    [Theory]
    [InlineData("STM32L0x3.svd", "RCC.ICSCR", 0x40021004, "MSIRANGE", 13, 3)]
    [InlineData("STM32L0x3.svd", "PWR.CR", 0x40007000, "DBP", 8, 1)]
    [InlineData("STM32L4x6.svd", "RCC.CR", 0x40021000, "PLLON", 24, 1)]
    [InlineData("STM32G071.svd", "RCC.IOPENR", 0x40021034, "IOPBEN", 1, 1)]
    [InlineData("nrf52840.svd", "P1.PIN_CNF[15]", 0x50000A3C, "PULL", 2, 2)]
    [InlineData("ATSAMD21J18A.svd", "PM.SLEEP", 0x40000401, "IDLE", 0, 2)]
    [InlineData("rp2040.svd", "CLOCKS.SLEEP_EN0", 0x400080A8, "clk_sys_rtc", 22, 1)]
    public void Published_facts_come_through(
        string file,
        string register,
        ulong address,
        string field,
        int lowBit,
        int width
    )
    {
        if (!Directory.Exists(Published))
        {
            Assert.Skip("the published files are not here");
        }

        var found = Load(Import(file).Text)
            .Registers.Single(r => string.Equals(r.Name, register, StringComparison.Ordinal));
        Assert.Equal(address, found.Address);
        Assert.Equal((lowBit, width), (found.Fields[field].LowBit, found.Fields[field].WidthBits));
    }

    [Fact]
    public void A_flood_is_refused_before_it_is_kept()
    {
        var path = Path.Combine(Path.GetTempPath(), $"powerlint-{Guid.NewGuid():N}.svd");
        try
        {
            using (var text = new StreamWriter(path))
            {
                text.Write("<device><name>X</name><description>");
                var line = new string('a', 1 << 16);
                for (var i = 0; i < 50 << 4; i++)
                {
                    text.Write(line);
                }

                text.Write("</description></device>");
            }

            Assert.Contains("million characters", Refusal(path), StringComparison.Ordinal);
            File.WriteAllText(path, string.Concat(Enumerable.Repeat("<device>", 100_000)));
            Assert.Contains("nested more than", Refusal(path), StringComparison.Ordinal);
            File.WriteAllText(path, Multiplied());
            Assert.Contains("more than 200000 registers", Refusal(path), StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }
    }

    // 65536 elements in each of three nested dimensions.
    private static string Multiplied()
    {
        const string Dimension = "<addressOffset>0</addressOffset><dim>65536</dim><dimIncrement>4</dimIncrement>";
        return "<device><name>X</name><peripherals><peripheral><name>P</name><baseAddress>0</baseAddress><registers>"
            + $"<cluster><name>A%s</name>{Dimension}<cluster><name>B%s</name>{Dimension}<register><name>C%s</name>{Dimension}"
            + "</register></cluster></cluster></registers></peripheral></peripherals></device>";
    }

    private static string Refusal(string path) =>
        Assert.Throws<DeviceModelException>(() => SvdImport.Import(path, "flood.svd", null)).Message;

    private static SvdSkeleton Import(string file) => SvdImport.Import(PathOf(file), file, "skeleton");

    private static string PathOf(string file) =>
        File.Exists(Path.Combine(Folder, file)) ? Path.Combine(Folder, file) : Path.Combine(Published, file);

    // With the sections that a skeleton leaves open as good as empty, what it has must load.
    private static DeviceModel Load(string skeleton)
    {
        var folder = Directory.CreateTempSubdirectory("powerlint-");
        try
        {
            File.Copy(
                RepositoryRoot.Combine("devices", "cortex-m.yaml"),
                Path.Combine(folder.FullName, "cortex-m.yaml")
            );
            var core = skeleton.Split('\n').Single(line => line.StartsWith("core: ", StringComparison.Ordinal));
            if (core is "core: other")
            {
                // Without an interrupt controller a skeleton does not tell when an interrupt is enabled.
                skeleton = skeleton.Replace("{ number: ", "{ enabled: never, number: ", StringComparison.Ordinal);
            }

            File.WriteAllText(Path.Combine(folder.FullName, "skeleton.yaml"), skeleton);
            var rest = new StringBuilder("family: whole\n").Append(core).Append('\n');
            rest.Append("extends: skeleton\nmembers: { whole: { packages: [] } }\n");
            rest.Append(
                "sources: { packages: from memory, ports: from memory, modes: from memory, peripherals: from memory"
            );
            rest.Append(", interrupts: from memory, sleep: from memory, regulators: from memory }\n");
            rest.Append("packages: {}\nports: {}\nmodes: {}\nperipherals: {}\nregulators: {}\nsleep: {}\n");
            rest.Append("reset-clock: { hertz: 1, source: from memory }\n");
            if (!skeleton.Contains("\ninterrupts:\n", StringComparison.Ordinal))
            {
                rest.Append("interrupts: {}\n");
            }

            File.WriteAllText(Path.Combine(folder.FullName, "whole.yaml"), rest.ToString());
            return DeviceCatalog.Open(folder.FullName).Load("whole");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static TheoryData<string> FilesIn(string folder) =>
        [
            .. Directory
                .EnumerateFiles(folder, "*.svd")
                .Select(path => Path.GetFileName(path))
                .Order(StringComparer.Ordinal),
        ];
}
