using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using PowerLint.Rules;

namespace PowerLint.OracleTests;

/// <summary>
/// Clean reference firmware, one power-relevant statement left out or altered at a time: the right rule must say the right
/// subject. <c>POWERLINT_MUTANTS</c> bounds how many are tried (all, where it is not set), chosen by
/// <c>POWERLINT_MUTANTS_SEED</c>; <c>POWERLINT_MUTANTS_OF</c> names the firmware that is tried, <c>family/scenario</c> or the
/// beginning of it, with commas between several.
/// </summary>
public sealed class MutationTests(ITestOutputHelper output)
{
    private const int LeastMutants = 900;

    private const int LeastFirmwares = 32;

    private const double LeastFound = 0.97;

    private static readonly string MissesFile = Path.Combine(MutationList.Root, "misses.txt");

    public static TheoryData<string> Firmwares => [.. Wanted()];

    [Theory]
    [MemberData(nameof(Firmwares))]
    public void The_originals_are_clean(string firmware) =>
        Assert.Empty(MutantRun.Of(firmware, mutation: null, TestContext.Current.CancellationToken).Select(Describe));

    [Fact]
    public void There_are_enough_mutants_and_no_two_are_the_same()
    {
        var mutations = MutationList.Firmwares().SelectMany(firmware => MutationList.Read(firmware)).ToArray();
        output.WriteLine(
            string.Join('\n', mutations.GroupBy(m => m.RuleId).OrderBy(g => g.Key).Select(g => $"{g.Count()} {g.Key}"))
        );
        output.WriteLine(string.Join('\n', mutations.GroupBy(m => m.Firmware).Select(g => $"{g.Count()} {g.Key}")));

        Assert.Equal(mutations.Length, mutations.Select(m => m.ToString()).Distinct(StringComparer.Ordinal).Count());
        Assert.All(mutations, mutation => Assert.NotNull(RuleCatalog.Find(mutation.RuleId)));
        Assert.True(mutations.Length >= LeastMutants, $"{mutations.Length} mutants");
        Assert.True(MutationList.Firmwares().Length >= LeastFirmwares, $"{MutationList.Firmwares().Length} firmwares");
    }

    [Fact]
    public void Mutants_are_found_by_the_right_rule_with_the_right_subject()
    {
        var cancellation = TestContext.Current.CancellationToken;
        var chosen = Chosen();
        var misses = new ConcurrentDictionary<string, string>(StringComparer.Ordinal);
        var more = new ConcurrentDictionary<string, int>(StringComparer.Ordinal);
        Parallel.ForEach(
            chosen,
            new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = 2 },
            mutation =>
            {
                ImmutableArray<Finding> findings;
                try
                {
                    findings = MutantRun.Of(mutation.Firmware, mutation, cancellation);
                }
                catch (InvalidOperationException notAnalysed)
                {
                    misses[mutation.ToString()] = notAnalysed.Message;
                    return;
                }

                var named = findings
                    .Where(finding => finding.RuleId == mutation.RuleId)
                    .SelectMany(finding => finding.Subjects)
                    .ToHashSet(StringComparer.Ordinal);
                if (!mutation.Subjects.All(named.Contains))
                {
                    misses[mutation.ToString()] = string.Join(
                        "; ",
                        findings.Select(Describe).DefaultIfEmpty("nothing")
                    );
                }

                foreach (var other in findings.Where(finding => finding.RuleId != mutation.RuleId))
                {
                    more.AddOrUpdate($"{mutation.RuleId} and {other.RuleId}", 1, (_, count) => count + 1);
                }
            }
        );

        var explained = Explained();
        output.WriteLine($"{chosen.Length - misses.Count} of {chosen.Length} mutants found");
        foreach (var (mutation, found) in misses.OrderBy(miss => miss.Key, StringComparer.Ordinal))
        {
            output.WriteLine(
                $"missed: {mutation}\n    found: {found}\n    why: {explained.GetValueOrDefault(mutation, "not explained")}"
            );
        }

        foreach (var (pair, count) in more.OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            output.WriteLine($"also: {pair}: {count}");
        }

        Assert.True(
            chosen.Length - misses.Count >= LeastFound * chosen.Length,
            $"{misses.Count} of {chosen.Length} were missed:\n{string.Join('\n', misses.Select(m => $"{m.Key}\n    found: {m.Value}").Order(StringComparer.Ordinal))}"
        );
        var open = misses.Where(m => !explained.ContainsKey(m.Key)).Select(m => $"{m.Key}\n    found: {m.Value}");
        Assert.Equal("", string.Join('\n', open.Order(StringComparer.Ordinal)));
        var mended = chosen.Select(m => m.ToString()).Where(m => explained.ContainsKey(m) && !misses.ContainsKey(m));
        Assert.Equal("", string.Join('\n', mended));
    }

    // A mutant that is missed stands in the file with its reason on the line below, four spaces in.
    private static Dictionary<string, string> Explained()
    {
        var lines = File.ReadAllLines(MissesFile).Where(line => line.Length > 0 && line[0] != '#').ToArray();
        return lines
            .Zip(lines.Skip(1))
            .Where(pair => !char.IsWhiteSpace(pair.First[0]))
            .ToDictionary(pair => pair.First, pair => pair.Second.Trim(), StringComparer.Ordinal);
    }

    private static IEnumerable<string> Wanted()
    {
        var beginnings = Environment.GetEnvironmentVariable("POWERLINT_MUTANTS_OF")?.Split(',') ?? [""];
        return MutationList
            .Firmwares()
            .Where(name => beginnings.Any(text => name.StartsWith(text, StringComparison.Ordinal)));
    }

    private static Mutation[] Chosen()
    {
        var all = Wanted().SelectMany(firmware => MutationList.Read(firmware)).ToArray();
        if (
            !int.TryParse(
                Environment.GetEnvironmentVariable("POWERLINT_MUTANTS"),
                CultureInfo.InvariantCulture,
                out var most
            )
        )
        {
            return all;
        }

        _ = int.TryParse(
            Environment.GetEnvironmentVariable("POWERLINT_MUTANTS_SEED"),
            CultureInfo.InvariantCulture,
            out var seed
        );
        new Random(seed).Shuffle(all);
        return all[..Math.Min(most, all.Length)];
    }

    private static string Describe(Finding finding) => $"{finding.RuleId} {string.Join(' ', finding.Subjects)}";
}
