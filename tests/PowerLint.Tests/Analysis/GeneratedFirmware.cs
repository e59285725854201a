using PowerLint.Analysis;
using PowerLint.Devices;
using PowerLint.Frontend;
using PowerLint.Program;
using PowerLint.Testing;

namespace PowerLint.Tests;

/// <summary>Firmware that a test writes, read and run on an ATmega328P: registers by address, no header needed.</summary>
internal sealed class GeneratedFirmware
{
    /// <summary>A few of the part's registers (ATmega328P data sheet, register summary) and its instructions.</summary>
    public const string Prelude = """
        #define PIND   (*(volatile unsigned char *)0x29)
        #define PORTB  (*(volatile unsigned char *)0x25)
        #define DDRB   (*(volatile unsigned char *)0x24)
        #define PORTC  (*(volatile unsigned char *)0x28)
        #define DDRC   (*(volatile unsigned char *)0x27)
        #define PORTD  (*(volatile unsigned char *)0x2B)
        #define SMCR   (*(volatile unsigned char *)0x53)
        #define TCNT1  (*(volatile unsigned int *)0x84)
        #define sleep() __asm__ __volatile__ ("sleep")

        """;

    private static readonly Lazy<DeviceModel> Device = new(() =>
        DeviceCatalog.Open(RepositoryRoot.Combine("devices")).Load("atmega328p")
    );

    private GeneratedFirmware(ReadResult read, AnalysisResult? result) => (Read, Result) = (read, result);

    public ReadResult Read { get; }

    /// <summary>The run; null where there is nothing to run.</summary>
    public AnalysisResult? Result { get; }

    /// <summary>Reads and runs a source, the prelude before it.</summary>
    public static GeneratedFirmware Run(string source, long stepBudget = 1_000_000)
    {
        var folder = Directory.CreateTempSubdirectory("powerlint-");
        try
        {
            var file = Path.Combine(folder.FullName, "main.c");
            File.WriteAllText(file, Prelude + source);
            var read = FirmwareReader.Read(
                new ReadRequest
                {
                    Files = [file],
                    Flags = ["avr-gcc", "-mmcu=atmega328p"],
                    DeviceName = "atmega328p",
                    WorkingDirectory = folder.FullName,
                    AsksCompilers = false,
                },
                TestContext.Current.CancellationToken
            );
            var image = ImageLinker.Link(read.Units);
            return new GeneratedFirmware(
                read,
                image is null
                    ? null
                    : ImageAnalyzer.Run(
                        image,
                        Device.Value,
                        new AnalysisOptions { StepBudget = stepBudget },
                        TestContext.Current.CancellationToken
                    )
            );
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>Holds a register at a resting point (counted from 0) against bits: <c>0</c>, <c>1</c>, <c>?</c> unknown.</summary>
    public void Expect(int point, string register, string bits)
    {
        var result = Result ?? throw new InvalidOperationException("Nothing was run.");
        Assert.True(point < result.RestingPoints.Length, $"There is no resting point {point}.");
        var found = result.RestingPoints[point].State.Read(result.Device.Registers.Single(r => r.Name == register));
        Assert.Equal(
            bits,
            string.Concat(
                Enumerable
                    .Range(0, 8)
                    .Reverse()
                    .Select(bit =>
                        (found.Known >> bit & 1) == 0 ? '?'
                        : (found.Value >> bit & 1) == 0 ? '0'
                        : '1'
                    )
            )
        );
    }

    /// <summary>Asks for exactly these notifications of the run, by identifier.</summary>
    public void ExpectLimits(params string[] identifiers) =>
        Assert.Equal(
            identifiers.Order(StringComparer.Ordinal),
            Result!.Limits.Select(limit => limit.Id).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)
        );
}
