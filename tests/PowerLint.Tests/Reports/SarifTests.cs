using System.Text.Json;
using Json.Schema;
using PowerLint.Reports;
using PowerLint.Rules;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>SARIF 2.1.0 output, held against the official schema that the SARIF library's package carries.</summary>
public sealed class SarifTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromFile(
        Path.Combine(AppContext.BaseDirectory, "schemata", "sarif-2.1.0.json")
    );

    [Fact]
    public void A_report_with_everything_is_valid()
    {
        using var document = JsonDocument.Parse(Write());
        AssertValid(document);
    }

    [Theory]
    [InlineData("hive-scale")]
    [InlineData("hive-scale-mended")]
    public void Reports_of_the_examples_are_valid(string example)
    {
        var result = TestConsole.Run(
            RepositoryRoot.Path,
            "check",
            "-p",
            Path.Combine("examples", example),
            "--format",
            "sarif"
        );
        using var document = JsonDocument.Parse(result.Output);
        AssertValid(document);
    }

    [Fact]
    public void The_schema_check_finds_faults()
    {
        using var document = JsonDocument.Parse(
            Write().Replace("\"startLine\":10", "\"startLine\":0", StringComparison.Ordinal)
        );
        Assert.False(Schema.Evaluate(document.RootElement).IsValid);
    }

    [Fact]
    public void The_driver_describes_every_rule_from_its_page()
    {
        var report = BenchLamp.Report(BenchLamp.Analyze());
        using var document = JsonDocument.Parse(Write(report));
        var run = document.RootElement.GetProperty("runs")[0];
        var rules = run.GetProperty("tool").GetProperty("driver").GetProperty("rules");

        Assert.Equal(RuleCatalog.All.Length, rules.GetArrayLength());
        Assert.Equal("utf16CodeUnits", run.GetProperty("columnKind").GetString());
        foreach (var (rule, written) in RuleCatalog.All.Zip(rules.EnumerateArray()))
        {
            Assert.Equal(rule.Id, Text(written, "id"));
            Assert.Equal(rule.Title, Text(written, "shortDescription", "text"));
            Assert.Equal(rule.Summary, Text(written, "fullDescription", "text"));
            Assert.Equal(DeviceStylePage.Of(rule, report.Device!.Style), Text(written, "help", "markdown"));
            Assert.DoesNotContain("```", Text(written, "help", "text"), StringComparison.Ordinal);

            // The schema's default level is warning, and defaults need not be written.
            var level = written.TryGetProperty("defaultConfiguration", out var configuration)
                ? Text(configuration, "level")
                : "warning";
            Assert.Equal(rule.DefaultLevel.ToString(), level, ignoreCase: true);
        }
    }

    [Fact]
    public void A_result_says_what_the_finding_says()
    {
        using var document = JsonDocument.Parse(Write());
        var run = document.RootElement.GetProperty("runs")[0];
        var result = run.GetProperty("results")[0];

        Assert.Equal("floating-pin", Text(result, "ruleId"));
        var rules = run.GetProperty("tool").GetProperty("driver").GetProperty("rules");
        Assert.Equal("floating-pin", Text(rules[result.GetProperty("ruleIndex").GetInt32()], "id"));
        Assert.Equal("PB5 is used to test [brackets] and {braces}.", Text(result, "message", "text"));
        var place = result.GetProperty("locations")[0].GetProperty("physicalLocation");
        Assert.Equal("main.c", Text(place, "artifactLocation", "uri"));
        Assert.Equal("SRCROOT", Text(place, "artifactLocation", "uriBaseId"));
        Assert.Equal(
            """{"startLine":10,"startColumn":5,"endLine":10,"endColumn":21}""",
            JsonSerializer.Serialize(place.GetProperty("region"))
        );
        var root = new Uri(Text(run.GetProperty("originalUriBaseIds"), "SRCROOT", "uri"));
        Assert.True(File.Exists(new Uri(root, "main.c").LocalPath));
        Assert.Equal("lamp_on() is called here", Text(result.GetProperty("relatedLocations")[0], "message", "text"));
        Assert.Equal("0123456789abcdef", Text(result, "partialFingerprints", "powerlint/v1"));
        var properties = result.GetProperty("properties");
        Assert.Equal("PB5", Assert.Single(properties.GetProperty("subjects").EnumerateArray()).GetString());
        Assert.Equal("proven", Text(properties, "certainty"));
        Assert.Equal("power-down", Text(properties, "sleepMode"));
        Assert.Equal(1350, properties.GetProperty("estimatedMicroamps").GetDouble());
        Assert.Equal("a figure of the test", Text(properties, "costBasis"));
    }

    [Fact]
    public void The_code_flow_goes_from_the_deciding_write_to_the_resting_point()
    {
        using var document = JsonDocument.Parse(Write());
        var result = document.RootElement.GetProperty("runs")[0].GetProperty("results")[0];
        var steps = result.GetProperty("codeFlows")[0].GetProperty("threadFlows")[0].GetProperty("locations");

        Assert.Equal(2, steps.GetArrayLength());
        Assert.Equal("DDRB 0x00 → 0x20: DDRB |= 1 << pin", Text(steps[0].GetProperty("location"), "message", "text"));
        Assert.Equal("0x20", Text(steps[0], "state", "DDRB", "text"));
        Assert.Equal(1, steps[0].GetProperty("nestingLevel").GetInt32());
        Assert.Equal(
            21,
            steps[1]
                .GetProperty("location")
                .GetProperty("physicalLocation")
                .GetProperty("region")
                .GetProperty("startLine")
                .GetInt32()
        );
    }

    [Fact]
    public void Allowed_findings_stay_with_their_reason()
    {
        using var document = JsonDocument.Parse(Write());
        var results = document.RootElement.GetProperty("runs")[0].GetProperty("results");
        Assert.Equal(3, results.GetArrayLength());
        var suppression = Assert.Single(results[2].GetProperty("suppressions").EnumerateArray());
        Assert.Equal("inSource", Text(suppression, "kind"));
        Assert.Equal("the lamp marks a live fence", Text(suppression, "justification"));
        Assert.False(results[0].TryGetProperty("suppressions", out _));
    }

    [Fact]
    public void What_was_cut_short_is_a_notification_and_never_a_result()
    {
        using var document = JsonDocument.Parse(Write());
        var invocation = document.RootElement.GetProperty("runs")[0].GetProperty("invocations")[0];
        Assert.False(invocation.GetProperty("executionSuccessful").GetBoolean());
        var notifications = invocation.GetProperty("toolExecutionNotifications");
        Assert.Equal("step-budget", Text(notifications[0], "descriptor", "id"));
        Assert.Equal("The run was cut short.", Text(notifications[0], "message", "text"));
        Assert.Equal("flag-left-out", Text(notifications[1], "descriptor", "id"));
    }

    [Fact]
    public void Files_outside_the_root_have_whole_addresses()
    {
        var report = BenchLamp.Report(BenchLamp.Analyze()) with
        {
            Paths = new ReportPaths(RepositoryRoot.Combine("devices")),
        };
        using var document = JsonDocument.Parse(Write(report));
        AssertValid(document);
        var place = document
            .RootElement.GetProperty("runs")[0]
            .GetProperty("results")[0]
            .GetProperty("locations")[0]
            .GetProperty("physicalLocation")
            .GetProperty("artifactLocation");
        Assert.Equal(new Uri(BenchLamp.Source).AbsoluteUri, Text(place, "uri"));
        Assert.False(place.TryGetProperty("uriBaseId", out _));
    }

    [Fact]
    public void The_same_report_is_written_the_same() => Assert.Equal(Write(), Write());

    private static string Write() => Write(BenchLamp.Report(BenchLamp.Analyze()));

    private static string Write(CheckReport report)
    {
        using var writer = new StringWriter();
        SarifReport.Write(report, writer);
        return writer.ToString();
    }

    private static void AssertValid(JsonDocument document) => Assert.Empty(Faults(document));

    /// <summary>What the official schema has against a log.</summary>
    internal static string[] Faults(JsonDocument document)
    {
        var evaluation = Schema.Evaluate(
            document.RootElement,
            new EvaluationOptions { OutputFormat = OutputFormat.List }
        );
        return evaluation.IsValid
            ? []
            :
            [
                .. (evaluation.Details ?? [])
                    .Where(detail => detail.Errors is not null)
                    .Select(detail => $"{detail.InstanceLocation}: {string.Join("; ", detail.Errors!.Values)}"),
                "not valid",
            ];
    }

    private static string Text(JsonElement element, params string[] path) =>
        path.Aggregate(element, (inner, name) => inner.GetProperty(name)).GetString()!;
}
