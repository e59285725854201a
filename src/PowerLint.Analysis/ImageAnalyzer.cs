using System.Runtime.ExceptionServices;
using PowerLint.Devices;
using PowerLint.Program;

namespace PowerLint.Analysis;

/// <summary>What a run may be told.</summary>
public sealed record AnalysisOptions
{
    /// <summary>The CPU clock in hertz, where the configuration gives one; else <c>F_CPU</c>, else the model's reset clock.</summary>
    public double? CpuHertz { get; init; }

    /// <summary>Whether a call that repeats an earlier one is done from memory. Off, the same comes out, later.</summary>
    public bool RepeatsCalls { get; init; } = true;

    /// <summary>How many expressions and statements may be executed before the rest is cut short.</summary>
    public long StepBudget { get; init; } = 20_000_000;
}

/// <summary>Runs an image in the abstract on a device.</summary>
public static class ImageAnalyzer
{
    // The run follows calls, statements and expressions into each other. Pages that are not touched cost nothing.
    private const int StackBytes = 512 * 1024 * 1024;

    /// <summary>Runs it.</summary>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public static AnalysisResult Run(
        Image image,
        DeviceModel device,
        AnalysisOptions options,
        CancellationToken cancellation = default
    )
    {
        ArgumentNullException.ThrowIfNull(image);
        ArgumentNullException.ThrowIfNull(device);
        ArgumentNullException.ThrowIfNull(options);
        AnalysisResult? result = null;
        ExceptionDispatchInfo? failure = null;
        var runner = new Thread(Work, StackBytes) { IsBackground = true };
        runner.Start();
        runner.Join();
        failure?.Throw();
        return result!;

        void Work()
        {
            try
            {
                var interpreter = new ImageInterpreter(image, device, options, cancellation);
                interpreter.Run();
                result = new ResultBuilder(interpreter, image, device, options).Build();
            }
            catch (Exception error)
            {
                failure = ExceptionDispatchInfo.Capture(error);
            }
        }
    }
}
