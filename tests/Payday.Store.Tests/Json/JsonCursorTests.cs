using NodaTime;
using Payday.Core.Amounts;
using Payday.Store.Fields;
using Payday.Store.Json;

namespace Payday.Store.Tests.Json;

public sealed class JsonCursorTests
{
    [Fact]
    public void Fields_OfSomethingElse_IsOneFaultAndNoneFromInside() =>
        Assert.Equal(
            ["a, line 1: A list stands here; write an object in { }."],
            Faults("{\"a\": [1]}", root =>
            {
                JsonFields inside = root.Fields().Required("a").Fields();
                inside.Required("b").Count(1, 2);
                inside.Required("c").Fields().Required("d").Date();
                inside.RefuseOthers();
            }));

    [Fact]
    public void Fields_Missing_IsOneFaultWithTheLineOfItsObject() =>
        Assert.Equal(
            ["a.b, line 2: This is missing; add an object in { }."],
            Faults("{\n\"a\":\n{}}", root => root.Fields().Required("a").Fields().Required("b").Fields().Required("c").Flag()));

    [Fact]
    public void RefuseOthers_HarmfulName_IsShownHarmless() =>
        Assert.Equal(
            ["a?[2Jb, line 1: This field is not known here; take it out, or write one of c."],
            Faults("{\"a\\u001b[2Jb\": 1}", root =>
            {
                JsonFields fields = root.Fields();
                fields.Optional("c");
                fields.RefuseOthers();
            }));

    [Fact]
    public void IsSound_FaultInside_IsFalseForAllAround()
    {
        JsonInput.Read("{\"a\": {\"b\": 1, \"c\": 2}}", root =>
        {
            JsonFields a = root.Fields().Required("a").Fields();
            JsonCursor b = a.Required("b");
            JsonCursor c = a.Required("c");
            b.OneLine(5);
            c.Count(0, 5);

            Assert.False(b.IsSound);
            Assert.True(c.IsSound);
            Assert.False(a.Owner.IsSound);
            Assert.False(root.IsSound);
            return root;
        });
    }

    [Fact]
    public void Values_Sound_AreRead()
    {
        var read = JsonInput.Read(
            "{\"amount\": \"12.5\", \"date\": \"2028-02-29\", \"rate\": \"0.0625\", \"dates\": [\"2026-01-01\"], \"map\": {\"x\": 1, \"y\": 2}}",
            root =>
            {
                JsonFields fields = root.Fields();
                Assert.Equal("12.50 USD", fields.Required("amount").Amount(Currency.FromCode("USD")).ToString());
                Assert.Equal(new LocalDate(2028, 2, 29), fields.Required("date").Date());
                Assert.Equal(0.0625m, fields.Required("rate").Fraction(1));
                Assert.Equal([new LocalDate(2026, 1, 1)], fields.Required("dates").Dates(1));
                Assert.Equal(["x", "y"], fields.Required("map").Entries(2).Select(entry => entry.Name));
                Assert.Null(fields.Optional("none"));
                return root;
            });

        Assert.True(read.Ok);
    }

    [Theory]
    [InlineData("\"2027-02-29\"", "2027-02-29 is not in the calendar: February 2027 has 28 days.")]
    [InlineData("\"2026-04-00\"", "2026-04-00 is not in the calendar: April 2026 has 30 days.")]
    [InlineData("\"2026-3-5\"", "\"2026-3-5\" is not a date; write it like 2026-03-05.")]
    [InlineData("\"٢٠٢٦-03-05\"", "\"٢٠٢٦-03-05\" is not a date; write it like 2026-03-05.")]
    [InlineData("20260305", "A number stands here; write a date such as \"2026-03-05\".")]
    public void Date_NotADate_SaysWhy(string json, string expected) =>
        Assert.Equal([$"line 1: {expected}"], Faults(json, root => root.Date()));

    [Theory]
    [InlineData("\"1e2\"")]
    [InlineData("\"0.1,2\"")]
    [InlineData("\"-0.1\"")]
    [InlineData("\"\"")]
    [InlineData("\"0.1000000000000000000000000000000000000001\"")]
    public void Fraction_NotAFraction_IsRefused(string json) => Assert.Single(Faults(json, root => root.Fraction(1)));

    private static IEnumerable<string> Faults(string json, Action<JsonCursor> read) =>
        JsonInput.Read(json, root =>
        {
            read(root);
            return root;
        }).Faults.Select(fault => fault.ToString());
}
