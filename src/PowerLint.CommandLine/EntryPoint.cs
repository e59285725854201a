using System.Runtime.InteropServices;
using PowerLint.CommandLine;

// The first Ctrl-C ends the run in order, the second one at once.
using var stop = new CancellationTokenSource();
using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
return CommandTree.Run(args, new SystemConsole(), stop.Token);

void Stop(PosixSignalContext signal)
{
    if (!stop.IsCancellationRequested)
    {
        signal.Cancel = true;
        stop.Cancel();
    }
}
