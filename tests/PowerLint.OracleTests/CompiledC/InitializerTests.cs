using System.Globalization;
using PowerLint.Frontend;
using PowerLint.Program;
using PowerLint.Testing;

namespace PowerLint.OracleTests;

/// <summary>
/// Sizes, layouts and initial values of the front end against those that avr-gcc (Debian's gcc-avr) compiles from the same
/// file: the C files of <c>tests/lowering</c> that are for its target.
/// </summary>
public sealed class InitializerTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("powerlint-compiled-").FullName;

    public static TheoryData<string> Files =>
        new(
            Directory
                .EnumerateFiles(RepositoryRoot.Combine("tests", "lowering"), "*.c")
                .Where(file => Flags(file).Any(flag => flag.StartsWith("-mmcu=atmega", StringComparison.Ordinal)))
                .Where(file => !File.ReadAllText(file).Contains("stdatomic.h", StringComparison.Ordinal))
                .Select(Path.GetFileName)
                .Order(StringComparer.Ordinal)!
        );

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Files))]
    public void Globals_hold_the_bytes_that_the_compiler_gives_them(string name)
    {
        var file = RepositoryRoot.Combine("tests", "lowering", name);
        var result = FirmwareReader.Read(
            new ReadRequest { Files = [file], Flags = Flags(file) },
            TestContext.Current.CancellationToken
        );
        var compiled = Compile(file);
        foreach (var global in Assert.Single(result.Units).Globals.Where(global => global.AliasOf is null))
        {
            if (compiled.TryGetValue(global.Name, out var bytes))
            {
                // Objects with a flexible array are longer than their type.
                Assert.True(global.Type.SizeBytes <= bytes.Length, $"{global.Name} has {global.Type.SizeBytes} bytes");
                var difference = InitialBytes.Of(global, bytes.Length).Difference(bytes);
                Assert.True(difference is null, $"{global.Name}: {difference}");
            }
        }
    }

    [Fact]
    public void The_comparison_sees_real_data()
    {
        var file = RepositoryRoot.Combine("tests", "lowering", "bit-fields.c");
        Assert.Equal([0x05, 0x55, 0x3D, 0, 0, 0], Compile(file)["flags"]);
    }

    private static string[] Flags(string file) =>
        File.ReadLines(file)
            .First()
            .Replace("// flags:", "", StringComparison.Ordinal)
            .Split(' ', StringSplitOptions.RemoveEmptyEntries);

    // Symbols whose bytes the object file holds, by name.
    private Dictionary<string, byte[]> Compile(string file)
    {
        var compiled = Path.Combine(_folder, "unit.o");
        ExternalTool.Run(
            "avr-gcc",
            [.. Flags(file), "-DF_CPU=8000000UL", "-O0", "-w", "-fno-common", "-c", "-o", compiled, file]
        );
        var sections = new Dictionary<char, byte[]>
        {
            ['d'] = Section(compiled, ".data"),
            ['r'] = Section(compiled, ".rodata"),
        };
        var symbols = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        foreach (var line in ExternalTool.Run("avr-nm", ["-S", "--defined-only", compiled]).Split('\n'))
        {
            var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (words.Length != 4)
            {
                continue;
            }

            var start = int.Parse(words[0], NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
            var size = int.Parse(words[1], NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
            var kind = char.ToLowerInvariant(words[2][0]);
            if (kind == 'b')
            {
                symbols[words[3]] = new byte[size];
            }
            else if (sections.TryGetValue(kind, out var content) && start + size <= content.Length)
            {
                symbols[words[3]] = content[start..(start + size)];
            }
        }

        return symbols;
    }

    private byte[] Section(string compiled, string section)
    {
        var path = Path.Combine(_folder, $"section{section}");
        ExternalTool.Run(
            "avr-objcopy",
            [
                "-O",
                "binary",
                "--only-section",
                section,
                "--set-section-flags",
                $"{section}=alloc,contents,load",
                compiled,
                path,
            ]
        );
        return File.Exists(path) ? File.ReadAllBytes(path) : [];
    }
}
