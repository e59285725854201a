namespace PowerLint.CommandLine;

internal static class EntryPoint
{
    private static int Main() => 0;
}
