using PowerLint.Analysis;
using PowerLint.Devices;
using PowerLint.Frontend;
using PowerLint.Program;

namespace PowerLint.OracleTests;

/// <summary>Runs our own analysis on firmware, in process.</summary>
internal static class AbstractRun
{
    /// <summary>Reads, links and analyses.</summary>
    /// <param name="firmware">The firmware.</param>
    /// <param name="model">The part.</param>
    /// <param name="repeatsCalls">Whether calls that repeat earlier ones are done from memory.</param>
    /// <exception cref="InvalidOperationException">It could not be read whole.</exception>
    public static AnalysisResult Of(Firmware firmware, DeviceModel model, bool repeatsCalls = true)
    {
        var read = FirmwareReader.Read(
            new ReadRequest
            {
                Files = firmware.Files,
                Flags = ["avr-gcc", $"-mmcu={firmware.Device}", "-Os", .. firmware.Flags],
                DeviceName = firmware.Device,
            }
        );
        if (read.Failure is { } failure)
        {
            throw new InvalidOperationException($"{failure.Path}:{failure.Line}: {failure.Message}");
        }

        if (read.Errors.Count > 0)
        {
            throw new InvalidOperationException(string.Join('\n', read.Errors));
        }

        if (read.Gaps.Any())
        {
            throw new InvalidOperationException(string.Join('\n', read.Gaps));
        }

        var image = ImageLinker.Link(read.Units) ?? throw new InvalidOperationException("There is no main.");
        return ImageAnalyzer.Run(image, model, new AnalysisOptions { RepeatsCalls = repeatsCalls });
    }
}
