using System.Text;
using System.Text.Json;

namespace PowerLint.Frontend;

/// <summary>Reads a compile database: a JSON array of objects with <c>directory</c>, <c>file</c> and <c>arguments</c> or <c>command</c>.</summary>
internal static class CompileDatabase
{
    private const int MostBytes = 256 * 1024 * 1024;

    public const string FileName = "compile_commands.json";

    // Wrappers that stand before the compiler in a build that caches or distributes.
    private static readonly HashSet<string> Wrappers = new(StringComparer.Ordinal)
    {
        "ccache",
        "sccache",
        "distcc",
        "icecc",
        "env",
    };

    /// <summary>Reads it.</summary>
    /// <exception cref="ReadException">It is missing, broken or empty.</exception>
    public static IReadOnlyList<CompileCommand> Load(string path)
    {
        var file = Directory.Exists(path) ? Path.Combine(path, FileName) : path;
        if (!File.Exists(file))
        {
            throw new ReadException(
                ReadFailureKind.DatabaseMissing,
                file,
                line: null,
                $"There is no compile database at {file}. Let the build write {FileName}, or name the C files and give the flags after --."
            );
        }

        var bytes =
            BoundedFile.Read(file, MostBytes)
            ?? throw new ReadException(
                ReadFailureKind.DatabaseBroken,
                file,
                line: null,
                $"{file} cannot be read as a compile database: check its permissions; it may have at most {MostBytes >> 20} MB."
            );
        var text = bytes.AsSpan().StartsWith("\uFEFF"u8) ? bytes.AsMemory(3) : bytes;
        JsonDocument document;
        try
        {
            document = JsonDocument.Parse(
                text,
                new JsonDocumentOptions { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip }
            );
        }
        catch (JsonException error)
        {
            var line = (int)(error.LineNumber ?? 0) + 1;
            throw Broken(file, line, $"{file}:{line}: this is not valid JSON. Let the build write the file again.");
        }

        using (document)
        {
            try
            {
                return ReadEntries(document.RootElement, file, Encoding.UTF8.GetString(text.Span));
            }
            catch (InvalidOperationException)
            {
                // Strings are decoded as they are asked for.
                throw Broken(
                    file,
                    1,
                    $"{file}:1: a string in this file is not valid UTF-8. Let the build write the file again."
                );
            }
        }
    }

    /// <summary>Splits a command line as a shell does: quotes, backslashes, blanks.</summary>
    public static List<string> SplitCommand(string command)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        var isInWord = false;
        for (var i = 0; i < command.Length; i++)
        {
            var character = command[i];
            switch (character)
            {
                case '\'':
                    isInWord = true;
                    for (i++; i < command.Length && command[i] != '\''; i++)
                    {
                        word.Append(command[i]);
                    }

                    break;
                case '"':
                    isInWord = true;
                    for (i++; i < command.Length && command[i] != '"'; i++)
                    {
                        if (command[i] == '\\' && i + 1 < command.Length && command[i + 1] is '"' or '\\' or '$' or '`')
                        {
                            i++;
                        }

                        word.Append(command[i]);
                    }

                    break;
                case '\\' when i + 1 < command.Length:
                    isInWord = true;
                    word.Append(command[++i]);
                    break;
                case ' ' or '\t' or '\n' or '\r':
                    if (isInWord)
                    {
                        words.Add(word.ToString());
                        word.Clear();
                        isInWord = false;
                    }

                    break;
                default:
                    isInWord = true;
                    word.Append(character);
                    break;
            }
        }

        if (isInWord)
        {
            words.Add(word.ToString());
        }

        return words;
    }

    private static List<CompileCommand> ReadEntries(JsonElement root, string file, string text)
    {
        if (root.ValueKind != JsonValueKind.Array)
        {
            throw Broken(file, 1, $"{file}:1: a compile database is a JSON array of commands, this is not.");
        }

        var folder = Path.GetDirectoryName(Path.GetFullPath(file))!;
        var commands = new List<CompileCommand>();
        var index = 0;
        foreach (var entry in root.EnumerateArray())
        {
            index++;
            commands.Add(ReadEntry(entry, folder, file, () => EntryLine(text, index)));
        }

        return commands.Count > 0
            ? commands
            : throw new ReadException(
                ReadFailureKind.DatabaseEmpty,
                file,
                line: null,
                $"{file} lists no file. Build the firmware once from clean so that the build records its commands."
            );
    }

    private static CompileCommand ReadEntry(JsonElement entry, string folder, string file, Func<int> line)
    {
        if (entry.ValueKind != JsonValueKind.Object || Text(entry, "file") is not { Length: > 0 } source)
        {
            throw Broken(file, line(), $"{file}:{line()}: this entry has no \"file\".");
        }

        var directory = Path.GetFullPath(Path.Combine(folder, Text(entry, "directory") ?? "."));
        List<string> words;
        if (entry.TryGetProperty("arguments", out var arguments) && arguments.ValueKind == JsonValueKind.Array)
        {
            words =
            [
                .. arguments
                    .EnumerateArray()
                    .Select(item => item.ValueKind == JsonValueKind.String ? item.GetString()! : ""),
            ];
        }
        else if (Text(entry, "command") is { } command)
        {
            words = SplitCommand(command);
        }
        else
        {
            throw Broken(file, line(), $"{file}:{line()}: this entry has neither \"arguments\" nor \"command\".");
        }

        var compiler = 0;
        while (
            compiler + 1 < words.Count
            && (
                Wrappers.Contains(Path.GetFileNameWithoutExtension(words[compiler]))
                || (
                    compiler > 0 && words[compiler].Contains('=', StringComparison.Ordinal) && words[compiler][0] != '-'
                )
            )
        )
        {
            compiler++;
        }

        return new CompileCommand(
            directory,
            Path.GetFullPath(Path.Combine(directory, source)),
            words.Count > 0 ? words[compiler] : null,
            words.Count > 0 ? words[(compiler + 1)..] : []
        )
        {
            Output = Text(entry, "output") ?? OutputFlag(words),
        };
    }

    private static string? OutputFlag(List<string> words)
    {
        var flag = words.LastIndexOf("-o");
        return flag >= 0 && flag + 1 < words.Count ? words[flag + 1]
            : words.FindLast(word => word.Length > 2 && word.StartsWith("-o", StringComparison.Ordinal)) is { } joined
                ? joined[2..]
            : null;
    }

    private static string? Text(JsonElement entry, string name) =>
        entry.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;

    private static ReadException Broken(string file, int line, string message) =>
        new(ReadFailureKind.DatabaseBroken, file, line, message);

    // JsonElement keeps no positions: count the objects of the outer array.
    private static int EntryLine(string text, int entry)
    {
        var depth = 0;
        var line = 1;
        var isString = false;
        for (var i = 0; i < text.Length; i++)
        {
            switch (text[i])
            {
                case '\n':
                    line++;
                    break;
                case '\\' when isString:
                    i++;
                    break;
                case '"':
                    isString = !isString;
                    break;
                case '{' or '[' when !isString:
                    depth++;
                    if (depth == 2 && --entry == 0)
                    {
                        return line;
                    }

                    break;
                case '}' or ']' when !isString:
                    depth--;
                    break;
            }
        }

        return line;
    }
}
