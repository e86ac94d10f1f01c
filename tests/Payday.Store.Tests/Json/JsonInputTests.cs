using System.Text;
using Payday.Store.Json;

namespace Payday.Store.Tests.Json;

public sealed class JsonInputTests
{
    [Theory]
    [InlineData("", "There is nothing in the text.")]
    [InlineData(" \r\n\t", "There is nothing in the text.")]
    [InlineData("{\n  \"a\": 1\n  \"b\": 2\n}", "line 3, column 3: The JSON is broken here; look just before for a missing comma, quote or bracket.")]
    [InlineData("{\n  \"é😀\": 1x\n}", "line 2, column 10: The JSON is broken here; look just before for a missing comma, quote or bracket.")]
    [InlineData("{\"a\": [1, 2}", "line 1, column 12: There is a comma too many before this bracket, or it closes one of the other kind.")]
    [InlineData("{\"a\": 1,}", "line 1, column 9: There is a comma too many before this bracket, or it closes one of the other kind.")]
    [InlineData("{\n\"a\": 1, // rent\n\"b\": 2}", "line 2, column 9: JSON has no comments; remove this one.")]
    [InlineData("{'a': 1}", "line 1, column 2: JSON has double quotes only; write \" here.")]
    [InlineData("{\"a\": 1", "line 1, column 8: The text ends too early; a bracket or a quote is not closed.")]
    [InlineData("{\"a\": [{\"b\": 1,\n\"b\": 2}]}", "a[0].b, line 2: This field stands here twice; keep one of them.")]
    [InlineData("{\"a\": 1, \"\\u0061\": 2}", "a, line 1: This field stands here twice; keep one of them.")]
    [InlineData("{\n\"a\": [1, \"\\ud800\"]}", "a[1], line 2: A \\u escape here spells half a character; write the character itself.")]
    public void Read_BrokenJson_IsOneFaultWithItsPlace(string json, string expected) =>
        Assert.Equal([expected], JsonInput.Read(json, cursor => cursor).Faults.Select(fault => fault.ToString()));

    [Fact]
    public void Read_DeepestAllowed_IsRead() => Assert.True(JsonInput.Read(Nested(JsonInput.MaxDepth), cursor => cursor).Ok);

    [Fact]
    public void Read_OneLevelDeeper_IsRefused() =>
        Assert.Equal(
            ["line 1: This is nested deeper than 32 levels; nothing here needs that."],
            JsonInput.Read(Nested(JsonInput.MaxDepth + 1), cursor => cursor).Faults.Select(fault => fault.ToString()));

    [Fact]
    public void Read_NotUtf8_SaysSo() =>
        Assert.Equal(
            ["This is not a text in UTF-8; save the file as UTF-8 and try again."],
            JsonInput.Read(new byte[] { (byte)'"', 0xE9, (byte)'"' }, cursor => cursor).Faults.Select(fault => fault.ToString()));

    [Fact]
    public void Read_ByteOrderMark_IsTakenOff() =>
        Assert.True(JsonInput.Read(Encoding.UTF8.GetBytes("\uFEFF{}"), cursor => cursor).Ok);

    [Fact]
    public void Read_MoreThan50MB_IsRefusedUnread()
    {
        var text = new string(' ', JsonInput.MaxBytes + 1);

        Assert.StartsWith("The text is larger than 50 MB", Assert.Single(JsonInput.Read(text, cursor => cursor).Faults).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_EndlessFaults_StopAtAThousand()
    {
        string json = $"[{string.Join(",", Enumerable.Repeat("1", 5_000))}]";

        var faults = JsonInput.Read(json, cursor =>
        {
            foreach (JsonCursor item in cursor.Items(5_000))
            {
                item.Is(System.Text.Json.JsonValueKind.String, new JsonWanted.Text());
            }

            return cursor;
        }).Faults;

        Assert.Equal(1_001, faults.Length);
        Assert.Contains("may be more", faults[^1].Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_ReaderGivesUpWithoutAFault_Throws() =>
        Assert.Throws<InvalidOperationException>(() => JsonInput.Read<JsonCursor>("{}", _ => null));

    private static string Nested(int levels) => new string('[', levels) + new string(']', levels);
}
