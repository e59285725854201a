using System.Text;
using PowerLint.Analysis;
using PowerLint.CommandLine;
using PowerLint.Devices;
using PowerLint.Frontend;
using PowerLint.Program;
using PowerLint.Testing;

namespace PowerLint.Fuzz;

/// <summary>Something that takes input of a kind: its corpus, its words, and what is done with an input.</summary>
internal sealed class Target
{
    private readonly Mutator _mutator;
    private readonly Action<byte[], string> _run;

    private Target(string name, IReadOnlyList<byte[]> corpus, string words, Action<byte[], string> run)
    {
        Name = name;
        _mutator = new Mutator(corpus, words.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        _run = run;
    }

    public string Name { get; }

    public static IReadOnlyList<Target> All { get; } =
    [
        new("c", C(), CWords, RunC),
        new("database", Databases(), DatabaseWords, RunDatabase),
        new("settings", Settings(), YamlWords, RunSettings),
        new("device", Devices(), YamlWords, RunDevice),
        new("svd", Svd(), SvdWords, RunSvd),
    ];

    /// <summary>The input of a number.</summary>
    public byte[] Input(int number) => _mutator.Make(number);

    /// <summary>Does with an input what the product does with such a file; what it may not do is throw, crash or take long.</summary>
    public void Run(byte[] input, string folder) => _run(input, folder);

    private const string CWords =
        "( ) { } [ ] ; , * & -> . ++ -- ! ~ ? : = == << >> # ## #define #include #if #endif \\ /* */ // \" ' int char unsigned long float volatile const static inline struct union enum typedef switch case default goto return for while do if else break continue sizeof _Generic __attribute__ ((interrupt)) ((signal)) ((naked)) asm __asm__ volatile __builtin_va_arg _Atomic _Complex __extension__ 0 1 0xFF 1.5e3f x y main PORTB DDRB sei() cli() sleep_cpu()";

    private const string DatabaseWords =
        "[ ] { } , : \" \\ \\\" \"file\" \"directory\" \"command\" \"arguments\" \"output\" avr-gcc iccarm armcc -I -D -include -isystem -o -mmcu= -mcpu= --cpu -x c++ @flags.txt -f --via /dev/zero /dev/stdin ../.. main.c main.cpp start.S -Xclang -fplugin=a -wrapper null true 1";

    private const string YamlWords =
        ": - { } [ ] , # & * ! | > ' \" ? % @ &a *a <<: --- ... device: board: pins: options: rules: clocks: exclude: registers: fields: address: width: reset: {base} {port} {bit} \"7:0\" null true ~ 0x24 1_000";

    private const string SvdWords =
        "< > </ /> & &amp; <!-- --> <![CDATA[ ]]> <!DOCTYPE d [<!ENTITY a \"b\">]> &a; <device> <peripherals> <peripheral> <registers> <register> <cluster> <field> <name> <dim> <dimIncrement> <dimIndex> derivedFrom=\"PUMP\" <addressOffset> <size> <bitRange> [7:0] <enumeratedValues> %s [%s]";

    private static List<byte[]> C() =>
        Files("*.c", "tests/lowering", "tests/states", "tests/rules", "examples")
            .Where(bytes => bytes.Length < 40_000)
            .ToList();

    private static List<byte[]> Databases() =>
        [
            .. Files("compile_commands.json", "examples", "tests/bad-input"),
            Encoding.UTF8.GetBytes(
                "[{ \"directory\": \".\", \"file\": \"main.c\", \"arguments\": [\"avr-gcc\", \"-mmcu=atmega328p\", \"-DX=1\", \"@flags.txt\", \"-c\", \"main.c\", \"-o\", \"CMakeFiles/a.dir/main.o\"] },\n"
                    + " { \"directory\": \".\", \"file\": \"start.S\", \"command\": \"iccarm --cpu=Cortex-M3 -f flags.txt 'a b' start.S\" }]"
            ),
        ];

    private static List<byte[]> Settings() =>
        [
            .. Files("powerlint.yaml", "examples", "tests"),
            Encoding.UTF8.GetBytes("device: atmega328p\nrules: { floating-pin: off }\n"),
        ];

    private static List<byte[]> Devices() => [.. Files("*.yaml", "devices").Where(bytes => bytes.Length < 70_000)];

    private static List<byte[]> Svd() => [.. Files("*.svd", "tests")];

    private static IEnumerable<byte[]> Files(string pattern, params string[] folders) =>
        folders
            .Select(folder => RepositoryRoot.Combine(folder.Split('/')))
            .SelectMany(folder => Directory.EnumerateFiles(folder, pattern, SearchOption.AllDirectories))
            .Where(path =>
                !path.Contains("/bin/", StringComparison.Ordinal) && !path.Contains("/obj/", StringComparison.Ordinal)
            )
            .Order(StringComparer.Ordinal)
            .Select(File.ReadAllBytes);

    private static readonly Lazy<DeviceModel> Part = new(() => DeviceCatalog.Open().Load("atmega328p"));

    private static void RunC(byte[] input, string folder)
    {
        File.WriteAllBytes(Path.Combine(folder, "main.c"), input);
        var read = FirmwareReader.Read(
            new ReadRequest
            {
                Files = ["main.c"],
                Flags = ["avr-gcc", "-mmcu=atmega328p", "-Os"],
                WorkingDirectory = folder,
            }
        );
        if (
            read.Errors.FirstOrDefault(error =>
                error.Message.Contains("defect of its own", StringComparison.Ordinal)
            ) is
            { } defect
        )
        {
            throw new InvalidOperationException(defect.Message);
        }

        if (ImageLinker.Link(read.Units) is { } image)
        {
            _ = ImageAnalyzer.Run(image, Part.Value, new AnalysisOptions { StepBudget = 100_000 });
        }
    }

    private static void RunDatabase(byte[] input, string folder)
    {
        File.WriteAllBytes(Path.Combine(folder, "compile_commands.json"), input);
        File.WriteAllText(Path.Combine(folder, "main.c"), "int main(void) { for (;;) ; }\n");
        File.WriteAllText(Path.Combine(folder, "start.S"), ".section .vectors\n.word main\n");
        File.WriteAllBytes(Path.Combine(folder, "flags.txt"), input.AsSpan(0, Math.Min(input.Length, 200)).ToArray());
        _ = FirmwareReader.Read(new ReadRequest { Database = ".", WorkingDirectory = folder });
    }

    private static void RunSettings(byte[] input, string folder)
    {
        File.WriteAllBytes(Path.Combine(folder, "powerlint.yaml"), input);
        File.WriteAllText(Path.Combine(folder, "main.c"), "int main(void) { for (;;) ; }\n");
        var console = new QuietConsole(folder);
        _ = CommandTree.Run(["check", "--device", "atmega328p", "main.c"], console);
        if (console.ErrorText.Contains("defect of PowerLint", StringComparison.Ordinal))
        {
            throw new InvalidOperationException(console.ErrorText);
        }
    }

    private static void RunDevice(byte[] input, string folder)
    {
        foreach (var old in Directory.EnumerateFiles(folder, "*.yaml"))
        {
            File.Delete(old);
        }

        foreach (var known in Directory.EnumerateFiles(RepositoryRoot.Combine("devices"), "*-classic.yaml"))
        {
            File.Copy(known, Path.Combine(folder, Path.GetFileName(known)));
        }

        File.WriteAllBytes(Path.Combine(folder, "mutated.yaml"), input);
        try
        {
            var catalog = DeviceCatalog.Open(folder);
            foreach (var name in catalog.Names.Take(2))
            {
                _ = catalog.Load(name);
            }
        }
        catch (DeviceModelException)
        {
            // What is wrong was said.
        }
    }

    private static void RunSvd(byte[] input, string folder)
    {
        var path = Path.Combine(folder, "mutated.svd");
        File.WriteAllBytes(path, input);
        try
        {
            _ = SvdImport.Import(path, "mutated.svd", family: null);
        }
        catch (DeviceModelException)
        {
            // What is wrong was said.
        }
    }
}
