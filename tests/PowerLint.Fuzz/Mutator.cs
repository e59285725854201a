namespace PowerLint.Fuzz;

/// <summary>Changes inputs: bytes, spans, words of the language, pieces of other inputs. The same seed makes the same change.</summary>
internal sealed class Mutator(IReadOnlyList<byte[]> corpus, IReadOnlyList<string> words)
{
    private const int MostBytes = 200_000;

    /// <summary>An input for a number.</summary>
    public byte[] Make(int number)
    {
        var random = new Random(number);
        var bytes = new List<byte>(corpus[random.Next(corpus.Count)]);
        for (var changes = random.Next(1, 9); changes > 0; changes--)
        {
            Change(bytes, random);
            if (bytes.Count > MostBytes)
            {
                bytes.RemoveRange(MostBytes, bytes.Count - MostBytes);
            }
        }

        return [.. bytes];
    }

    private void Change(List<byte> bytes, Random random)
    {
        var at = random.Next(bytes.Count + 1);
        var rest = bytes.Count - at;
        var length = Math.Min(rest, random.Next(1, random.Next(2, 400)));
        switch (random.Next(9))
        {
            case 0 when rest > 0:
                bytes[at] ^= (byte)(1 << random.Next(8));
                break;
            case 1 when rest > 0:
                bytes[at] = (byte)random.Next(256);
                break;
            case 2:
                bytes.RemoveRange(at, length);
                break;
            case 3:
                bytes.InsertRange(random.Next(bytes.Count + 1), bytes.GetRange(at, length));
                break;
            case 4:
                bytes.InsertRange(at, Word(random));
                break;
            case 5:
                // Far more of one thing than anybody writes.
                var many = Word(random);
                for (var times = random.Next(1, 3000); times > 0; times--)
                {
                    bytes.InsertRange(at, many);
                }

                break;
            case 6:
                var other = corpus[random.Next(corpus.Count)];
                var from = random.Next(other.Length + 1);
                bytes.InsertRange(at, other.AsSpan(from, Math.Min(other.Length - from, random.Next(1, 600))).ToArray());
                break;
            case 7 when rest > 0:
                bytes.RemoveRange(at, rest);
                break;
            default:
                // A number that is at some edge.
                bytes.InsertRange(at, Number(random));
                break;
        }
    }

    private byte[] Word(Random random) => System.Text.Encoding.UTF8.GetBytes(words[random.Next(words.Count)]);

    private static byte[] Number(Random random)
    {
        string[] edges =
        [
            "0",
            "-1",
            "255",
            "65536",
            "2147483648",
            "4294967295",
            "9223372036854775808",
            "18446744073709551616",
            "1e999",
            "0x",
            "08",
            "0xFFFFFFFFFFFFFFFFFF",
        ];
        return System.Text.Encoding.UTF8.GetBytes(edges[random.Next(edges.Length)]);
    }
}
