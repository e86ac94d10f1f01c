using System.Text;
using CsCheck;
using Payday.Core.Households;
using Payday.Store.HouseholdFiles;
using Payday.Store.Json;

namespace Payday.Store.Tests.HouseholdFiles;

public sealed class HouseholdFileFuzzTests
{
    private static readonly byte[] Demo = Encoding.UTF8.GetBytes(DemoFile.Text);

    // What breaks a file in practice, and what breaks a reader.
    private static readonly Gen<string> Shards = Gen.OneOf(
        "", "\"", "{", "}", "[", "]", ",", ":", "null", "true", "-1", "1e400", "0.1", "\"\"", "\"\\ud800\"", "{}", "[]", "\"20\"",
        "9999999999999999999999", "\"92233720368547758.07\"", "\"0.00\"", "\"9999-12-31\"", "\"2199-12-31\"", "\"kind\"", "\0", "\n", "//", "\"\\u202e\"");

    [Fact]
    public void Read_AnyBytes_NeverThrows() =>
        Gen.Byte.Array[0, 200].Sample(bytes => Judge(HouseholdFile.Read(bytes)), iter: 1_000);

    [Fact]
    public void Read_AnyText_NeverThrows() =>
        Gen.String.Sample(text => Judge(HouseholdFile.Read(text)), iter: 1_000);

    [Fact]
    public void Read_DemoWithBytesReplaced_NeverThrows() =>
        Gen.Select(Gen.Int[0, Demo.Length - 1], Gen.Int[0, 12], Shards).Array[1, 3].Sample(cuts =>
        {
            byte[] bytes = Demo;
            foreach ((int at, int length, string shard) in cuts)
            {
                int start = Math.Min(at, bytes.Length);
                bytes = [.. bytes[..start], .. Encoding.UTF8.GetBytes(shard), .. bytes[Math.Min(bytes.Length, start + length)..]];
            }

            Judge(HouseholdFile.Read(bytes));
        }, iter: 500);

    [Fact]
    public void Read_DemoWithAValueReplaced_NeverThrows()
    {
        // Whole values, so that the JSON stays sound and the rules behind it are reached.
        string[] lines = DemoFile.Text.Split('\n');
        int[] values = [.. Enumerable.Range(0, lines.Length).Where(i => lines[i].Contains("\": ", StringComparison.Ordinal) && !lines[i].EndsWith('{') && !lines[i].EndsWith('['))];
        Gen.Select(Gen.Int[0, values.Length - 1], Shards).Array[1, 4].Sample(changes =>
        {
            string[] changed = [.. lines];
            foreach ((int which, string shard) in changes)
            {
                string line = changed[values[which]];
                int colon = line.IndexOf("\": ", StringComparison.Ordinal);
                if (colon >= 0)
                {
                    changed[values[which]] = line[..(colon + 3)] + shard + (line.EndsWith(',') ? "," : "");
                }
            }

            Judge(HouseholdFile.Read(string.Join('\n', changed)));
        }, iter: 500);
    }

    private static void Judge(JsonReading<Household> reading)
    {
        Assert.Equal(reading.Ok, reading.Faults.IsEmpty);
        Assert.All(reading.Faults, fault =>
        {
            Assert.Matches(@"^\S.*[.)]$", fault.Sentence);
            Assert.Null(SafeText.FirstHarmful(fault.ToString()));
        });
        if (reading.Ok)
        {
            string json = HouseholdFile.Write(reading.Value);
            Assert.Equal(json, HouseholdFile.Write(HouseholdFile.Read(json).Value!));
        }
    }
}
