using System.Globalization;
using PowerLint.Analysis;
using PowerLint.Devices;
using PowerLint.Frontend;
using PowerLint.Program;
using PowerLint.Testing;

namespace PowerLint.OracleTests;

/// <summary>
/// The functions of <see cref="CompiledFunctionsTests"/> with the semantics of 32-bit Arm. Oracle: the code of Debian's
/// gcc-arm-linux-gnueabi under qemu-user, with the enumerations of bare-metal Arm and signed overflow that wraps around.
/// </summary>
public sealed class ArmFunctionsTests(ITestOutputHelper output)
{
    private const string Compiler = "arm-linux-gnueabi-gcc";
    private const string Emulator = "qemu-arm";
    private const ulong FirstAddress = 0x2000_0000;

    private static readonly string Folder = RepositoryRoot.Combine("tests", "PowerLint.OracleTests", "CompiledC");
    private static readonly string Header = Path.Combine(Folder, "arm", "result.h");

    private static readonly Lazy<DeviceModel> Model = new(() =>
        DeviceCatalog.Open(RepositoryRoot.Combine("tests", "arm-layout", "devices")).Load("layout32")
    );

    public static TheoryData<string> Files => CompiledFunctionsTests.Files;

    [Theory]
    [MemberData(nameof(Files))]
    public void The_analysis_evaluates_as_the_compiler_does(string file)
    {
        DemandTools();
        var agreement = Evaluate(Path.Combine(Folder, "functions", file + ".c"));
        output.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{agreement.Results} results, {agreement.Results - agreement.Unknown.Count - agreement.Open.Count} wholly known"
            )
        );
        Assert.True(agreement.Faults.Count == 0, string.Join('\n', agreement.Faults));
        Assert.True(agreement.Unknown.Count == 0, string.Join('\n', agreement.Unknown));
    }

    [Fact]
    public void Random_functions_evaluate_as_the_compiler_does()
    {
        DemandTools();
        const int Programs = 20;
        var folder = Directory.CreateTempSubdirectory("powerlint-arm-");
        try
        {
            var faults = new List<string>();
            var (results, unknown) = (0, 0);
            for (var seed = 1; seed <= Programs; seed++)
            {
                var path = Path.Combine(
                    folder.FullName,
                    string.Create(CultureInfo.InvariantCulture, $"functions{seed}.c")
                );
                File.WriteAllText(path, FunctionGenerator.Generate(seed));
                var agreement = Evaluate(path);
                faults.AddRange(agreement.Faults.Select(fault => $"seed {seed}: {fault}"));
                results += agreement.Results;
                unknown += agreement.Unknown.Count;
            }

            output.WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"{results} results, {unknown} not wholly known")
            );
            Assert.True(faults.Count == 0, string.Join('\n', faults.Take(40)));
            Assert.True(unknown <= results / 100, $"{unknown} of {results} results are not wholly known.");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static ResultAgreement Evaluate(string file)
    {
        var program = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        try
        {
            string[] shared = ["-DF_CPU=8000000UL", "-include", Header, $"-I{Path.Combine(Folder, "functions")}"];
            ExternalTool.Run(
                Compiler,
                [
                    "-static",
                    "-O1",
                    "-fwrapv",
                    "-fno-strict-aliasing",
                    "-fshort-enums",
                    "-Wl,--no-enum-size-warning",
                    "-w",
                    .. shared,
                    "-o",
                    program,
                    file,
                ]
            );
            var results = ExternalTool
                .Run(Emulator, [program])
                .Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Select(line => uint.Parse(line, NumberStyles.HexNumber, CultureInfo.InvariantCulture))
                .ToArray();
            return ResultComparison.Compare(File.ReadAllText(file), Analyze(file, shared), FirstAddress, results);
        }
        finally
        {
            File.Delete(program);
        }
    }

    private static AnalysisResult Analyze(string file, string[] flags)
    {
        var read = FirmwareReader.Read(
            new ReadRequest
            {
                Files = [file],
                Flags = ["arm-none-eabi-gcc", "-mcpu=cortex-m0plus", "-mthumb", .. flags],
                DeviceName = "layout32",
                AsksCompilers = false,
            }
        );
        Assert.Null(read.Failure);
        Assert.Empty(read.Errors);
        Assert.Empty(read.Gaps);
        var image = ImageLinker.Link(read.Units);
        Assert.NotNull(image);
        return ImageAnalyzer.Run(image, Model.Value, new AnalysisOptions());
    }

    private static void DemandTools()
    {
        foreach (var tool in new[] { Compiler, Emulator })
        {
            var isThere = (Environment.GetEnvironmentVariable("PATH") ?? "")
                .Split(Path.PathSeparator)
                .Any(folder => folder.Length > 0 && File.Exists(Path.Combine(folder, tool)));
            if (!isThere)
            {
                Assert.False(Environment.GetEnvironmentVariable("CI") is { Length: > 0 }, $"{tool} is not installed.");
                Assert.Skip(
                    $"{tool} is not installed: apt-get install gcc-arm-linux-gnueabi libc6-dev-armel-cross qemu-user"
                );
            }
        }
    }
}
