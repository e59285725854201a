using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using PowerLint.Devices;
using PowerLint.Testing;

namespace PowerLint.Tests.Devices;

/// <summary>What the build digests is what the files say, and only as long as they say it.</summary>
public sealed class ModelDigestTests
{
    private static readonly string Models = RepositoryRoot.Combine("devices");

    private static readonly DeviceCatalog Files = DeviceCatalog.OpenFiles(Models);

    // The program's own, as the build left it beside the tests.
    private static readonly DeviceCatalog Digested = DeviceCatalog.Open();

    public static TheoryData<string> Parts => [.. Files.Names];

    [Fact]
    public void The_build_digests_the_models() => Assert.True(Digested.IsDigested);

    [Fact]
    public void The_same_parts_are_listed()
    {
        Assert.Equal(Files.Families.Select(Describe), Digested.Families.Select(Describe));

        static string Describe((string Family, System.Collections.Immutable.ImmutableArray<string> Members) family) =>
            $"{family.Family}: {string.Join(' ', family.Members)}";
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void A_digested_model_is_the_one_in_the_files(string part)
    {
        Assert.Equal(ModelText.Of(Files.Load(part)), ModelText.Of(Digested.Load(part)));
    }

    [Fact]
    public void Options_act_on_a_digested_model_alike()
    {
        var set = new Dictionary<string, ulong>(StringComparer.Ordinal) { ["LFUSE"] = 0xFF, ["LFUSE.CKOUT"] = 0 };

        var model = Digested.Load("atmega328p", set);

        Assert.Equal(ModelText.Of(Files.Load("atmega328p", set)), ModelText.Of(model));
        var fuse = model.Registers.Single(r => string.Equals(r.Name, "LFUSE", StringComparison.Ordinal));
        Assert.Equal(0xBFUL, fuse.Reset);
        // Conditions look at the fuse that was set.
        Assert.Same(fuse, model.ClockOutputs.Single().On.Fields.Single().Register);
    }

    // From the part's data sheet, chapter BOD (from memory): the fuse's bits for sleep are loaded into those of the control register.
    [Fact]
    public void Options_reach_the_registers_that_are_loaded_from_them()
    {
        var set = new Dictionary<string, ulong>(StringComparer.Ordinal) { ["FUSE.BODCFG"] = 0x05 };

        var model = Digested.Load("attiny1614", set);

        Assert.Equal(ModelText.Of(Files.Load("attiny1614", set)), ModelText.Of(model));
        var control = model.Registers.Single(r => string.Equals(r.Name, "BOD.CTRLA", StringComparison.Ordinal));
        Assert.Equal(1UL, control.Reset & 3);
    }

    [Theory]
    [InlineData("LFUSES", 1UL)]
    [InlineData("LFUSE", 0x100UL)]
    public void Wrong_options_are_told_as_they_are_without_a_digest(string name, ulong value)
    {
        var set = new Dictionary<string, ulong>(StringComparer.Ordinal) { [name] = value };

        var files = Assert.Throws<DeviceModelException>(() => Files.Load("atmega328p", set));
        var digested = Assert.Throws<DeviceModelException>(() => Digested.Load("atmega328p", set));

        Assert.Equal(files.Errors.Select(error => error.Message), digested.Errors.Select(error => error.Message));
    }

    [Theory]
    [InlineData("__AVR_ATtiny13A__", "__AVR_ATtiny13B__")]
    [InlineData("family: ", "family:  ")]
    public void An_edited_file_is_read_itself(string text, string edited)
    {
        using var folder = Copy();
        var file = Path.Combine(folder.Path, "attiny13.yaml");
        Assert.True(DeviceCatalog.Open(folder.Path).IsDigested);
        var before = File.ReadAllText(file);
        Assert.Contains(text, before, StringComparison.Ordinal);

        File.WriteAllText(file, before.Replace(text, edited, StringComparison.Ordinal));

        Assert.False(DeviceCatalog.Open(folder.Path).IsDigested);
    }

    [Fact]
    public void Another_file_makes_the_digest_void()
    {
        using var folder = Copy();
        File.Copy(Path.Combine(folder.Path, "avr-classic.yaml"), Path.Combine(folder.Path, "avr-other.yaml"));

        Assert.False(DeviceCatalog.Open(folder.Path).IsDigested);
    }

    [Fact]
    public void A_damaged_digest_is_no_digest()
    {
        using var folder = Copy();
        var file = Path.Combine(folder.Path, ModelDigest.FileName);
        File.WriteAllBytes(file, File.ReadAllBytes(file)[..20]);

        Assert.False(DeviceCatalog.Open(folder.Path).IsDigested);
    }

    [Fact]
    public void A_digest_is_the_same_wherever_and_whenever_it_is_made()
    {
        using var folder = Copy();

        Assert.Equal(ModelDigest.Make(Models), ModelDigest.Make(folder.Path));
    }

    private static TemporaryFolder Copy()
    {
        var folder = new TemporaryFolder();
        foreach (var file in Directory.EnumerateFiles(DeviceCatalog.DefaultFolder))
        {
            File.Copy(file, Path.Combine(folder.Path, Path.GetFileName(file)));
        }

        return folder;
    }

    /// <summary>All that a model holds, as text, found by reflection; what is shared is told by number.</summary>
    private sealed class ModelText
    {
        private readonly StringBuilder _text = new();
        private readonly Dictionary<object, int> _seen = new(ReferenceEqualityComparer.Instance);

        internal static string Of(DeviceModel model)
        {
            var text = new ModelText();
            text.Add(model, 0);
            return text._text.ToString();
        }

        private void Add(object? value, int depth)
        {
            switch (value)
            {
                case null or string or IFormattable or bool:
                    _text.Append(Convert.ToString(value, CultureInfo.InvariantCulture) ?? "nothing").Append('\n');
                    break;
                case IEnumerable items:
                    _text.Append("list\n");
                    foreach (var item in items)
                    {
                        Add(item, depth + 1);
                    }

                    break;
                case ValueType when value.GetType().IsGenericType:
                    AddProperties(value, depth);
                    break;
                default:
                    if (_seen.TryGetValue(value, out var number))
                    {
                        _text.Append('#').Append(number).Append('\n');
                        break;
                    }

                    _seen.Add(value, _seen.Count);
                    AddProperties(value, depth);
                    break;
            }
        }

        private void AddProperties(object value, int depth)
        {
            _text.Append(value.GetType().Name).Append('\n');
            var properties = value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance);
            foreach (var property in properties.OrderBy(p => p.Name, StringComparer.Ordinal))
            {
                _text.Append(' ', depth).Append(property.Name).Append(": ");
                Add(property.GetValue(value), depth + 1);
            }
        }
    }
}
