using System.Text;

namespace Formwright.Fuzz;

/// <summary>Makes one input out of good ones, by a few random changes of bytes, pieces and lines. The same random gives the same input.</summary>
internal sealed class Mutator(IFuzzTarget target)
{
    private const int Longest = 1 << 16;
    private readonly byte[][] pieces = [.. target.Pieces.Select(Encoding.UTF8.GetBytes)];

    public byte[] Make(Random random)
    {
        List<byte> input = [.. Pick(target.Seeds, random)];
        int most = random.Next(2) == 0 ? Math.Min(3, target.MostChanges) : target.MostChanges;
        int changes = random.Next(10) == 0 ? 0 : 1 + random.Next(most);
        for (int i = 0; i < changes; i++)
        {
            Change(input, random);
        }

        if (input.Count > Longest)
        {
            input.RemoveRange(Longest, input.Count - Longest);
        }

        return [.. input];
    }

    private void Change(List<byte> input, Random random)
    {
        int at = random.Next(input.Count + 1);
        int length = Math.Min(random.Next(1, random.Next(2) == 0 ? 4 : 40), input.Count - at);
        switch (random.Next(14))
        {
            case 0 when at < input.Count:
                input[at] ^= (byte)(1 << random.Next(8));
                break;
            case 1:
                input.Insert(at, (byte)random.Next(256));
                break;
            case 2:
                input.RemoveRange(at, length);
                break;
            case 3:
                input.InsertRange(random.Next(input.Count + 1), input.GetRange(at, length));
                break;
            case 4:
                input.RemoveRange(at, input.Count - at);
                break;
            case 5:
                byte[] run = new byte[random.Next(1, 300)];
                Array.Fill(run, length > 0 ? input[at] : (byte)'[');
                input.InsertRange(at, run);
                break;
            case 6:
                byte[] other = Pick(target.Seeds, random);
                int from = random.Next(other.Length + 1);
                input.InsertRange(at, other[from..Math.Min(other.Length, from + random.Next(400))]);
                break;
            case 7 or 8:
                ChangeLines(input, random);
                break;
            case 9 or 10:
                ReplaceWord(input, at, Pick(pieces, random));
                break;
            default:
                input.InsertRange(at, Pick(pieces, random));
                break;
        }
    }

    // Moves, doubles or drops a whole line.
    private static void ChangeLines(List<byte> input, Random random)
    {
        (int start, int length) = LineAt(input, random.Next(input.Count + 1));
        List<byte> line = input.GetRange(start, length);
        int kind = random.Next(3);
        if (kind != 0)
        {
            input.RemoveRange(start, length);
        }

        if (kind != 1)
        {
            (int to, _) = LineAt(input, random.Next(input.Count + 1));
            input.InsertRange(to, line);
        }
    }

    private static void ReplaceWord(List<byte> input, int at, byte[] piece)
    {
        static bool IsPart(byte b) =>
            char.IsAsciiLetterOrDigit((char)b) || b is (byte)'_' or (byte)'.';
        int start = at;
        while (start > 0 && IsPart(input[start - 1]))
        {
            start--;
        }

        int end = at;
        while (end < input.Count && IsPart(input[end]))
        {
            end++;
        }

        input.RemoveRange(start, end - start);
        input.InsertRange(start, piece);
    }

    private static (int Start, int Length) LineAt(List<byte> input, int at)
    {
        int start = at == 0 ? 0 : input.LastIndexOf((byte)'\n', at - 1) + 1;
        int end = input.IndexOf((byte)'\n', start);
        return (start, (end < 0 ? input.Count : end + 1) - start);
    }

    private static T Pick<T>(IReadOnlyList<T> from, Random random) => from[random.Next(from.Count)];
}
