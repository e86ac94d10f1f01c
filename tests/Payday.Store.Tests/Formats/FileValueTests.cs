using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Core.Pots;
using Payday.Store.Formats;
using Payday.Store.Json;

namespace Payday.Store.Tests.Formats;

public sealed class FileValueTests
{
    [Fact]
    public void Read_Sound_IsTheValue()
    {
        Assert.Equal(12.5m, Read("\"12.5\"", FileValues.Amount));
        Assert.Equal(new LocalDate(2028, 2, 29), Read("\"2028-02-29\"", FileValues.Date));
        Assert.Equal(0.0625m, Read("\"0.0625\"", FileValues.Rate));
        Assert.Equal([new LocalDate(2026, 1, 1)], Read("[\"2026-01-01\"]", FileValues.Dates)!.Value);
        Assert.Equal(
            [new NoteCountDraft(20, 1), new NoteCountDraft(5, 2)],
            Read("{\"20\": 1, \"5\": 2}", new CountsValue(() => OpeningDraft.Members.LooseNotes))!.Value.ToArray());
        Assert.Equal(FillPer.Month, Read("\"month\"", new WordValue<FillPer>(Words.FillPers)));
    }

    [Theory]
    [InlineData("\"2027-02-29\"", "2027-02-29 is not in the calendar: February 2027 has 28 days.")]
    [InlineData("\"2026-04-00\"", "2026-04-00 is not in the calendar: April 2026 has 30 days.")]
    [InlineData("\"2026-3-5\"", "\"2026-3-5\" is not a date; write it like 2026-03-05.")]
    [InlineData("\"٢٠٢٦-03-05\"", "\"٢٠٢٦-03-05\" is not a date; write it like 2026-03-05.")]
    [InlineData("20260305", "A number stands here; write a date such as \"2026-03-05\".")]
    public void Date_NotADate_SaysWhy(string json, string expected) =>
        Assert.Equal([$"line 1: {expected}"], Faults(json, FileValues.Date));

    [Theory]
    [InlineData("\"1e2\"")]
    [InlineData("\"0.1,2\"")]
    [InlineData("\"-0.1\"")]
    [InlineData("\"\"")]
    public void Rate_NotAFraction_IsRefused(string json) => Assert.Single(Faults(json, FileValues.Rate));

    // More decimals than a number here holds are none that a check takes.
    [Fact]
    public void Rate_OfManyDecimals_KeepsMoreThanAreTaken() =>
        Assert.True(Read("\"0.1000000000000000000000000000000000000001\"", FileValues.Rate)!.Value.Scale > HouseholdLimits.RateDecimals);

    private static T? Read<T>(string json, FileValue<T> value)
    {
        T? read = default;
        Assert.Empty(JsonInput.Read(json, root =>
        {
            read = value.Read(root, new FileReading { Currency = Currency.FromCode("USD") });
            return root;
        }).Faults);
        return read;
    }

    private static ImmutableArray<string> Faults<T>(string json, FileValue<T> value) =>
        [.. JsonInput.Read(json, root =>
        {
            value.Read(root, new FileReading { Currency = Currency.FromCode("USD") });
            return root;
        }).Faults.Select(fault => fault.ToString())];
}
