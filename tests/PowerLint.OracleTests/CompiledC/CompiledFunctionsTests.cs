using System.Globalization;
using PowerLint.Testing;

namespace PowerLint.OracleTests;

/// <summary>
/// Small pure functions, evaluated by the analysis and by compiled code. Oracle: avr-gcc's code under libsimavr 1.6.
/// </summary>
public sealed class CompiledFunctionsTests(ITestOutputHelper output)
{
    private const string Device = "atmega328p";

    private static readonly string Folder = RepositoryRoot.Combine(
        "tests",
        "PowerLint.OracleTests",
        "CompiledC",
        "functions"
    );

    public static TheoryData<string> Files =>
        new(
            Directory
                .EnumerateFiles(Folder, "*.c")
                .Select(file => Path.GetFileNameWithoutExtension(file))
                .Order(StringComparer.Ordinal)
        );

    [Theory]
    [MemberData(nameof(Files))]
    public void The_analysis_evaluates_as_the_compiler_does(string file)
    {
        var path = Path.Combine(Folder, file + ".c");
        var agreement = Evaluate([new Firmware(file, Device, ["-DF_CPU=8000000UL"], [path])]).Single();
        Report(agreement);
        Assert.True(agreement.Faults.Count == 0, string.Join('\n', agreement.Faults));

        Assert.True(agreement.Unknown.Count == 0, string.Join('\n', agreement.Unknown));
    }

    [Fact]
    public void Random_functions_evaluate_as_the_compiler_does()
    {
        const int Programs = 40;
        var folder = SimulatorHarness.NewFolder();
        try
        {
            var images = Enumerable
                .Range(1, Programs)
                .Select(seed =>
                {
                    var name = string.Create(CultureInfo.InvariantCulture, $"functions{seed}");
                    var path = Path.Combine(folder, name + ".c");
                    File.WriteAllText(path, FunctionGenerator.Generate(seed));
                    return new Firmware(name, Device, ["-DF_CPU=8000000UL", $"-I{Folder}"], [path]);
                })
                .ToArray();
            var agreements = Evaluate(images);
            var faults = agreements.SelectMany((a, index) => a.Faults.Select(f => $"seed {index + 1}: {f}")).ToArray();
            var unknown = agreements
                .SelectMany((a, index) => a.Unknown.Select(f => $"seed {index + 1}: {f}"))
                .ToArray();
            var results = agreements.Sum(a => a.Results);
            output.WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"{results} results, {unknown.Length} not wholly known")
            );
            Assert.True(faults.Length == 0, string.Join('\n', faults.Take(40)));
            Assert.True(unknown.Length <= results / 100, string.Join('\n', unknown.Take(40)));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static ResultAgreement[] Evaluate(IReadOnlyList<Firmware> images)
    {
        var folder = SimulatorHarness.NewFolder();
        try
        {
            var elves = AvrCompiler.BuildAll(images, folder);
            var runs = SimulatorHarness.Run(images.Select((image, index) => ResultComparison.Job(image, elves[index])));
            return
            [
                .. images.Select(
                    (image, index) =>
                        ResultComparison.Compare(
                            File.ReadAllText(image.Files[0]),
                            AbstractRun.Of(image, Models.Of(image.Device)),
                            runs[index]
                        )
                ),
            ];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private void Report(ResultAgreement agreement)
    {
        output.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{agreement.Results} results, {agreement.Results - agreement.Unknown.Count - agreement.Open.Count} wholly known"
            )
        );
        foreach (var line in agreement.Open)
        {
            output.WriteLine(line);
        }
    }
}
