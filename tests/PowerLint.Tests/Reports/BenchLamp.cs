using PowerLint.Analysis;
using PowerLint.Devices;
using PowerLint.Frontend;
using PowerLint.Program;
using PowerLint.Reports;
using PowerLint.Rules;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>A small firmware, analysed, and a report over it made by hand: writers are tested apart from what rules say.</summary>
internal static class BenchLamp
{
    public static string Folder { get; } = RepositoryRoot.Combine("tests", "reports", "bench-lamp");

    public static string Source { get; } = Path.Combine(Folder, "main.c");

    public static AnalysisResult Analyze()
    {
        var read = FirmwareReader.Read(
            new ReadRequest
            {
                Files = ["main.c"],
                Flags = ["-mmcu=atmega328p"],
                WorkingDirectory = Folder,
            },
            TestContext.Current.CancellationToken
        );
        Assert.Null(read.Failure);
        return ImageAnalyzer.Run(
            ImageLinker.Link(read.Units)!,
            DeviceCatalog.Open().Load("atmega328p"),
            new AnalysisOptions(),
            TestContext.Current.CancellationToken
        );
    }

    public static CheckReport Report(AnalysisResult result)
    {
        var point = result.RestingPoints[0];
        var ddrb = result.Device.Registers.Single(register => register.Name is "DDRB");
        var driven = new Finding
        {
            RuleId = "floating-pin",
            Level = Level.Warning,
            Certainty = Certainty.Proven,
            Subjects = ["PB5"],
            Message = "PB5 is used to test [brackets] and {braces}.",
            Range = Range(10, 5, 10, 21),
            Function = "lamp_on",
            Fingerprint = "0123456789abcdef",
            Related = [new RelatedLocation(Range(16, 5, 16, 15), "lamp_on() is called here")],
            Flow = point.State.DecisionsOf(new FieldReference(ddrb, 5, 1, "DDRB.DDB5")),
            Point = point,
            SleepMode = "power-down",
            Cost = new CostEstimate(1350, "a figure of the test"),
        };
        return new CheckReport
        {
            Device = result.Device,
            Findings =
            [
                driven,
                driven with
                {
                    RuleId = "sleep-disabled",
                    Level = Level.Error,
                    Certainty = Certainty.Possible,
                    Subjects = ["SLEEP"],
                    Message = "A finding without flow.",
                    Range = Range(21, 9, 21, 38),
                    Function = "main",
                    Fingerprint = "fedcba9876543210",
                    Related = [],
                    Flow = [],
                    SleepMode = null,
                    Cost = CostEstimate.Unknown,
                },
            ],
            Allowed =
            [
                new AllowedFinding(
                    driven with
                    {
                        Level = Level.Note,
                        Certainty = Certainty.BoardDependent,
                        Fingerprint = "00000000",
                    },
                    "the lamp marks a live fence"
                ),
            ],
            Notices =
            [
                new Notice(NoticeLevel.Warning, "step-budget", "The run was cut short.", Range(19, 5, 19, 13), true),
                new Notice(NoticeLevel.Note, "flag-left-out", "A flag was left out.", Range: null, false),
            ],
            Paths = new ReportPaths(Folder),
            ToolVersion = "1.2.3",
        };
    }

    public static string Golden(string name) => Path.Combine(Folder, name);

    private static SourceRange Range(int line, int column, int endLine, int endColumn)
    {
        var file = new SourceFile(Source, IsSystem: false);
        return new SourceRange(new SourcePosition(file, line, column), new SourcePosition(file, endLine, endColumn));
    }
}
