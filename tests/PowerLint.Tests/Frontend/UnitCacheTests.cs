using PowerLint.Frontend;
using PowerLint.Program;

namespace PowerLint.Tests;

/// <summary>The cache of lowered units: used where nothing changed, never where anything did, and never a reason to fail.</summary>
public sealed class UnitCacheTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("powerlint-cache-").FullName;

    public UnitCacheTests()
    {
        Directory.CreateDirectory(Path.Combine(_folder, "include"));
        Directory.CreateDirectory(Path.Combine(_folder, "src"));
        Write("include/board.h", "#define LAMP 3\n#include \"deep/wiring.h\"\n");
        Directory.CreateDirectory(Path.Combine(_folder, "include", "deep"));
        Write("include/deep/wiring.h", "static inline int wiring(void) { return 4; }\n");
        Write(
            "src/main.c",
            "#include \"board.h\"\nint x = LAMP; // powerlint: a note\nint main(void) { return wiring(); }\n"
        );
        Write("src/other.c", "int other(void) { return 2; }\n");
    }

    private string Cache => Path.Combine(_folder, "cache");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Unchanged_units_come_from_the_cache_as_they_were()
    {
        var first = Read();
        var second = Read();

        Assert.Equal((0, 2), (first.UnitsFromCache, second.UnitsFromCache));
        for (var i = 0; i < 2; i++)
        {
            Assert.Null(new GraphComparison().Difference(first.Units[i], second.Units[i]));
        }
    }

    [Theory]
    [InlineData("include/board.h", "#define LAMP 5\n#include \"deep/wiring.h\"\n")]
    [InlineData("include/deep/wiring.h", "static inline int wiring(void) { return 9; }\n")]
    [InlineData("src/main.c", "int main(void) { return 1; }\n")]
    // A header that is new, and found before the one that was included.
    [InlineData("src/board.h", "#define LAMP 6\nstatic inline int wiring(void) { return 0; }\n")]
    [InlineData("include/deep/deep/wiring.h", "static inline int wiring(void) { return 7; }\n")]
    public void A_change_in_what_a_unit_is_made_of_is_seen(string file, string content)
    {
        _ = Read();
        Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(_folder, file))!);
        Write(file, content);

        var changed = Read();
        Assert.Equal(1, changed.UnitsFromCache);
        Assert.Equal(LoweringCase.Text(Read(cache: null).Units[0]), LoweringCase.Text(changed.Units[0]));
    }

    [Fact]
    public void A_file_that_is_as_it_was_again_is_found_again()
    {
        _ = Read();
        Write("src/main.c", "int main(void) { return 1; }\n");
        _ = Read();
        Write(
            "src/main.c",
            "#include \"board.h\"\nint x = LAMP; // powerlint: a note\nint main(void) { return wiring(); }\n"
        );
        Assert.Equal(2, Read().UnitsFromCache);
    }

    [Fact]
    public void Other_flags_and_another_device_are_other_units()
    {
        _ = Read();
        Assert.Equal(0, Read(flags: ["-DMORE=1"]).UnitsFromCache);
        Assert.Equal(0, Read(part: "attiny85").UnitsFromCache);
        Assert.Equal(2, Read().UnitsFromCache);
    }

    [Fact]
    public void Units_with_errors_are_read_anew()
    {
        Write("src/main.c", "#include \"absent.h\"\nint main(void) { return 1; }\n");
        Assert.Single(Read().Errors);
        var again = Read();
        Assert.Single(again.Errors);
        Assert.Equal(1, again.UnitsFromCache);
    }

    [Theory]
    [InlineData("__has_include(\"absent.h\")")]
    [InlineData("0\n# embed \"src/other.c\"\n#endif\n#if 0")]
    public void Units_that_ask_for_files_in_other_ways_are_read_anew(string condition)
    {
        Write("src/main.c", $"#if {condition}\n#endif\nint main(void) {{ return 1; }}\n");
        _ = Read();
        Assert.Equal(1, Read().UnitsFromCache);
    }

    [Fact]
    public void Whatever_happened_to_an_entry_it_is_only_a_miss()
    {
        var expected = Read().Units.Select(LoweringCase.Text).ToArray();
        var random = new Random(6);
        for (var round = 0; round < 40; round++)
        {
            foreach (var entry in Entries())
            {
                var bytes = File.ReadAllBytes(entry);
                switch (round % 5)
                {
                    case 0:
                        File.WriteAllBytes(entry, []);
                        break;
                    case 1:
                        File.WriteAllBytes(entry, bytes[..random.Next(bytes.Length)]);
                        break;
                    case 2:
                        bytes[random.Next(bytes.Length)] ^= (byte)(1 << random.Next(8));
                        File.WriteAllBytes(entry, bytes);
                        break;
                    case 3:
                        File.WriteAllBytes(entry, [.. bytes, 0]);
                        break;
                    default:
                        File.Delete(entry);
                        Directory.CreateDirectory(entry);
                        break;
                }
            }

            var read = Read();
            Assert.Null(read.Failure);
            Assert.Equal(0, read.UnitsFromCache);
            Assert.Equal(expected, read.Units.Select(LoweringCase.Text));
            foreach (
                var blocked in Directory.EnumerateDirectories(Cache, "*.entry", SearchOption.AllDirectories).ToList()
            )
            {
                Directory.Delete(blocked);
            }

            _ = Read();
            Assert.Equal(2, Read().UnitsFromCache);
        }
    }

    [Fact]
    public void An_entry_under_the_wrong_name_is_a_miss()
    {
        _ = Read();
        var entries = Entries();
        var (first, second) = (File.ReadAllBytes(entries[0]), File.ReadAllBytes(entries[1]));
        File.WriteAllBytes(entries[0], second);
        File.WriteAllBytes(entries[1], first);
        Assert.Equal(0, Read().UnitsFromCache);
    }

    [Fact]
    public void A_cache_that_cannot_be_written_is_done_without()
    {
        File.WriteAllText(Cache, "not a folder");
        Assert.Equal(2, Read().Units.Count);
        Assert.Equal(0, Read().UnitsFromCache);
    }

    [Fact]
    public void Runs_at_the_same_time_do_not_disturb_one_another()
    {
        var expected = Read(cache: null).Units.Select(LoweringCase.Text).ToArray();
        var results = new ReadResult[8];
        var threads = Enumerable.Range(0, results.Length).Select(i => new Thread(() => results[i] = Read())).ToArray();
        Array.ForEach(threads, thread => thread.Start());
        Array.ForEach(threads, thread => thread.Join());

        Assert.All(results, result => Assert.Equal(expected, result.Units.Select(LoweringCase.Text)));
        Assert.Empty(Directory.EnumerateFiles(Cache, "*.draft", SearchOption.AllDirectories));
        Assert.Equal(2, Read().UnitsFromCache);
    }

    [Fact]
    public void The_longest_unused_entries_go_when_the_bound_is_reached()
    {
        var store = new CacheStore(Cache, mostBytes: 10_000);
        for (byte i = 0; i < 12; i++)
        {
            store.Write(Key(i), new byte[900]);
            File.SetLastWriteTimeUtc(
                Entries().Single(path => path.Contains($"{i:x2}{i:x2}{i:x2}", StringComparison.Ordinal)),
                new DateTime(2020, 1, 1 + i, 0, 0, 0, DateTimeKind.Utc)
            );
        }

        // Used, so young again.
        Assert.NotNull(store.Read(Key(0)));
        store.Trim();

        Assert.True(Entries().Sum(path => new FileInfo(path).Length) <= 10_000);
        Assert.NotNull(store.Read(Key(0)));
        Assert.Null(store.Read(Key(1)));
        Assert.NotNull(store.Read(Key(11)));

        static byte[] Key(byte i) => [.. Enumerable.Repeat(i, CacheStore.KeyBytes)];
    }

    private List<string> Entries() =>
        [
            .. Directory
                .EnumerateFiles(Cache, "*.entry", SearchOption.AllDirectories)
                .Where(path => !path.Contains("/parts/", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal),
        ];

    private ReadResult Read(string? cache = "cache", string part = "atmega328p", string[]? flags = null) =>
        FirmwareReader.Read(
            new ReadRequest
            {
                Files = ["src/main.c", "src/other.c"],
                Flags = [$"-mmcu={part}", "-Iinclude", .. flags ?? []],
                AsksCompilers = false,
                WorkingDirectory = _folder,
                CacheFolder = cache is null ? null : Path.Combine(_folder, cache),
            },
            TestContext.Current.CancellationToken
        );

    private void Write(string name, string content) => File.WriteAllText(Path.Combine(_folder, name), content);
}
