using System.Collections.Immutable;
using System.Text;
using CsCheck;
using Ical.Net.CalendarComponents;
using NodaTime;
using Payday.Calendars;
using Payday.Text;

namespace Payday.Tests.Calendars;

/// <summary>The file as RFC 5545 has it, and as a calendar library of others (Ical.Net) reads it.</summary>
public class CalendarFileTests
{
    private static readonly Instant Made = Instant.FromUtc(2026, 3, 6, 10, 0);

    // Anything that a name may hold, and each sign that the format gives a meaning.
    private static readonly Gen<string> Texts = Gen.OneOf(
        Gen.OneOf("a", "ö", "€", "👩‍👧", "日本", "\\", ";", ",", ":", "\"", "\n", "\r\n", "\u001b[2J", "\u202e", " ", "BEGIN:VEVENT", "\\n", "\u0085"),
        Gen.String[0, 40]).Array[0, 30].Select(string.Concat);

    [Fact]
    public void Write_AnyTexts_AreReadBackAsTheyWereCleaned() =>
        Gen.Select(Texts, Texts, Texts).Sample((name, summary, description) =>
        {
            var one = new DayEvent("bill rent 2026-04-01", new LocalDate(2026, 4, 1), summary, description);

            byte[] file = CalendarFile.Write(name, "book", [one], Made);

            CalendarEvent read = Assert.Single(Ical.Net.Calendar.Load(Encoding.UTF8.GetString(file))!.Events);
            Assert.Equal(Cleaned(summary), read.Summary ?? "");
            Assert.Equal(Cleaned(description), read.Description ?? "");
            Assert.True(read.IsAllDay);
        });

    [Fact]
    public void Write_AnyTexts_KeepsTheLinesOfTheStandard() =>
        Gen.Select(Texts, Texts).Sample((summary, description) =>
        {
            byte[] file = CalendarFile.Write("Home", "book", [new DayEvent("x", new LocalDate(2026, 4, 1), summary, description)], Made);

            string text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(file);
            Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
            string[] lines = text.Split("\r\n");

            // 3.1: lines end with CRLF and have at most 75 octets; a control character is in none (3.3.11).
            Assert.All(lines, line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
            Assert.All(lines, line => Assert.DoesNotContain(line, char.IsControl));
            Assert.Equal(1, lines.Count(line => line == "BEGIN:VEVENT"));
        });

    [Fact]
    public void Write_AnEvent_IsAsTheStandardWritesIt()
    {
        var one = new DayEvent("bill rent 2026-04-01", new LocalDate(2026, 4, 1), "Rent; flat, 2nd floor: due", "1,450.00 USD\nback\\slash");

        string file = Encoding.UTF8.GetString(CalendarFile.Write("Our home", "book", [one], Made));

        Assert.Equal(
            [
                "BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Payday//Payday//EN", "CALSCALE:GREGORIAN", "NAME:Our home",
                "BEGIN:VEVENT",
                $"UID:{EventId.Of("book", "bill rent 2026-04-01")}",
                "DTSTAMP:20260306T100000Z",
                "DTSTART;VALUE=DATE:20260401",
                @"SUMMARY:Rent\; flat\, 2nd floor: due",
                @"DESCRIPTION:1\,450.00 USD\nback\\slash",
                "CLASS:PRIVATE",
                "TRANSP:TRANSPARENT",
                "END:VEVENT",
                "END:VCALENDAR",
                "",
            ],
            file.Split("\r\n"));
    }

    [Fact]
    public void EventId_OfAKey_IsAUuidOfVersion8ThatNeverChanges()
    {
        // What is in people's calendars is known by it; of the standard only version and variant (RFC 9562, 5.8), the rest from here.
        Assert.Equal("16c8d65a-1b4b-850f-a12b-b9b4035f06a5", EventId.Of("book", "bill rent 2026-04-01"));
        Assert.NotEqual(EventId.Of("book", "bill rent 2026-04-01"), EventId.Of("other", "bill rent 2026-04-01"));
        Assert.All(Enumerable.Range(0, 100), i => Assert.Matches("^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$", EventId.Of("book", $"{i}")));
    }

    private static string Cleaned(string text) => string.Join("\n", text.Split('\n').Select(CleanText.OneLine));
}
