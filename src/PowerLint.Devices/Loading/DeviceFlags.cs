namespace PowerLint.Devices;

/// <summary>The compiler flags that can name a part.</summary>
internal static class DeviceFlags
{
    private static readonly string[] NamingOptions = ["-mmcu", "-mcpu", "-D"];

    /// <summary>Options that name a part or define a macro, with their value, in one argument or two.</summary>
    public static IEnumerable<(string Option, string Value, string Flag)> Read(IEnumerable<string> flags)
    {
        string? waiting = null;
        foreach (var flag in flags)
        {
            if (waiting is not null)
            {
                yield return (waiting, NameOf(waiting, flag), $"{waiting} {flag}");
                waiting = null;
                continue;
            }

            foreach (var option in NamingOptions)
            {
                if (string.Equals(flag, option, StringComparison.Ordinal))
                {
                    waiting = option;
                }
                else if (
                    flag.StartsWith(option, StringComparison.Ordinal) && (option is "-D" || flag[option.Length] == '=')
                )
                {
                    var value = option is "-D" ? flag[option.Length..] : flag[(option.Length + 1)..];
                    yield return (option, NameOf(option, value), flag);
                }
            }
        }
    }

    /// <summary>Whether the name is of a processor core or architecture, which many parts share.</summary>
    public static bool IsArchitecture(string name) =>
        name.StartsWith("cortex-", StringComparison.Ordinal)
        || name.StartsWith("avrxmega", StringComparison.Ordinal)
        || name.StartsWith("avrtiny", StringComparison.Ordinal)
        || name.StartsWith("msp430x", StringComparison.Ordinal)
        || (name.StartsWith("avr", StringComparison.Ordinal) && name.Length <= 5 && name.Skip(3).All(char.IsAsciiDigit))
        || name is "msp430" or "430" or "430x" or "430xv2";

    private static string NameOf(string option, string value)
    {
        var equals = option is "-D" ? value.IndexOf('=', StringComparison.Ordinal) : -1;
        return equals < 0 ? value : value[..equals];
    }
}
