using System.Text;

namespace RangeMap.Records.Tests;

/// <summary>Changes a sound file by a seed: its bytes as packed, the bytes of a part before packing, or which parts there are.</summary>
internal static class FuzzChange
{
    // Pieces that matter to some reader, put where they do not belong.
    private static readonly byte[][] Pieces =
    [
        .. new[]
        {
            "\"", "\n", "\r", ",", "\t", "\0", "''", "<", ">", "&", "<!DOCTYPE a [<!ENTITY b 'c'>]>", "&b;", "../", "-1", "99999999999", "0", "NaN", "1E308", "r='1048577'", "t='s'", "index='9999'", "ZZZ1",
            "\\t", "\\n", "2026-06-07", "before ", "1/1/1", "\uFEFF", "\uFFFF", "</row>", "<row>", "<c>", "</c>", "<v>1</v>", "default='x'", "rowType='x'", "<location>../x</location>", "_x0000_", "PK\u0003\u0004",
        }.Select(Encoding.UTF8.GetBytes),
        [0xFF], [0x80], [0x1F, 0x8B, 8], [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1], [0xFF, 0xFE],
    ];

    /// <summary>The kind of the file before it was changed, and the changed file.</summary>
    public static (string Kind, byte[] Bytes) Make(int seed)
    {
        var chance = new Random(seed);
        var file = FuzzSeeds.All[seed % FuzzSeeds.All.Count];
        var parts = file.Parts.ToList();
        if (chance.Next(3) > 0)
        {
            var at = chance.Next(parts.Count);
            parts[at] = (parts[at].Name, ChangeBytes(chance, parts[at].Content));
        }

        if (parts.Count > 1 && chance.Next(6) == 0)
            ChangeParts(chance, parts);
        var bytes = file.Pack(parts);
        return (file.Kind, chance.Next(3) == 0 ? ChangeBytes(chance, bytes) : bytes);
    }

    private static byte[] ChangeBytes(Random chance, byte[] content)
    {
        var bytes = content.ToList();
        for (var changes = 1 + chance.Next(4); changes > 0 && bytes.Count > 0; changes--)
            ChangeOnce(chance, bytes, chance.Next(bytes.Count));
        return [.. bytes];
    }

    private static void ChangeOnce(Random chance, List<byte> bytes, int at)
    {
        var length = Math.Min(1 + chance.Next(40), bytes.Count - at);
        switch (chance.Next(7))
        {
            case 0:
                bytes.RemoveRange(at, length);
                break;
            case 1:
                bytes.InsertRange(at, Pieces[chance.Next(Pieces.Length)]);
                break;
            case 2:
                bytes[at] ^= (byte)(1 << chance.Next(8));
                break;
            case 3:
                bytes.InsertRange(chance.Next(bytes.Count), bytes.GetRange(at, length));
                break;
            case 4:
                bytes[at] = (byte)chance.Next(256);
                break;
            case 5:
                bytes.RemoveRange(at, bytes.Count - at);
                break;
            default:
                var piece = Pieces[chance.Next(Pieces.Length)];
                bytes.RemoveRange(at, Math.Min(piece.Length, bytes.Count - at));
                bytes.InsertRange(at, piece);
                break;
        }
    }

    private static void ChangeParts(Random chance, List<(string Name, byte[] Content)> parts)
    {
        int at = chance.Next(parts.Count), other = chance.Next(parts.Count);
        switch (chance.Next(4))
        {
            case 0:
                parts.RemoveAt(at);
                break;
            case 1:
                parts.Add(parts[at]);
                break;
            case 2:
                (parts[at], parts[other]) = ((parts[at].Name, parts[other].Content), (parts[other].Name, parts[at].Content));
                break;
            default:
                // The writer of zip files takes no empty name.
                var name = Encoding.Latin1.GetString(ChangeBytes(chance, Encoding.Latin1.GetBytes(parts[at].Name)));
                parts[at] = (name.Length == 0 ? "x" : name, parts[at].Content);
                break;
        }
    }
}
