using System.Collections.Immutable;
using System.Text;
using NodaTime;
using NodaTime.Text;
using Payday.Text;

namespace Payday.Calendars;

/// <summary>Events as an iCalendar file (RFC 5545), for any calendar program.</summary>
internal static class CalendarFile
{
    // Octets of a line without its end (RFC 5545, 3.1).
    private const int LongestLine = 75;

    private static readonly LocalDatePattern Day = LocalDatePattern.CreateWithInvariantCulture("uuuuMMdd");
    private static readonly InstantPattern Moment = InstantPattern.CreateWithInvariantCulture("uuuuMMdd'T'HHmmss'Z'");

    /// <summary>All of a file, in UTF-8.</summary>
    /// <param name="name">What the calendar is called, from a person's file.</param>
    /// <param name="book">Which book it is of; see <see cref="EventId"/>.</param>
    /// <param name="events">The events.</param>
    /// <param name="made">When it is made; to the second.</param>
    /// <returns>
    /// Each event lasts its whole day, leaves the person free, and is private (CLASS, 3.8.1.3): what bills there are is nobody
    /// else's business where a calendar is shared.
    /// </returns>
    public static byte[] Write(string name, string book, ImmutableArray<DayEvent> events, Instant made)
    {
        IEnumerable<string> lines =
        [
            "BEGIN:VCALENDAR",
            "VERSION:2.0",
            "PRODID:-//Payday//Payday//EN",
            "CALSCALE:GREGORIAN",
            "NAME:" + Escaped(name),
            .. events.SelectMany(one => (string[])
            [
                "BEGIN:VEVENT",
                "UID:" + EventId.Of(book, one.Key),
                "DTSTAMP:" + Moment.Format(made),
                "DTSTART;VALUE=DATE:" + Day.Format(one.Date),
                "SUMMARY:" + Escaped(one.Summary),
                .. one.Description.Length == 0 ? Array.Empty<string>() : ["DESCRIPTION:" + Escaped(one.Description)],
                "CLASS:PRIVATE",
                "TRANSP:TRANSPARENT",
                "END:VEVENT",
            ]),
            "END:VCALENDAR",
        ];
        return Encoding.UTF8.GetBytes(string.Concat(lines.Select(line => Folded(line) + "\r\n")));
    }

    // TEXT, 3.3.11. Each line of it is cleaned for itself: what is left in the whole are the line feeds between them.
    private static string Escaped(string text) => string.Join("\\n", text.Split('\n').Select(line => CleanText.OneLine(line)
        .Replace("\\", "\\\\", StringComparison.Ordinal)
        .Replace(";", "\\;", StringComparison.Ordinal)
        .Replace(",", "\\,", StringComparison.Ordinal)));

    // The blank that begins a line that goes on counts too. No character is cut in two, though the standard would let it be.
    private static string Folded(string line)
    {
        var folded = new StringBuilder(line.Length);
        int octets = 0;
        foreach (Rune rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > LongestLine)
            {
                folded.Append("\r\n ");
                octets = 1;
            }

            folded.Append(rune);
            octets += rune.Utf8SequenceLength;
        }

        return folded.ToString();
    }
}
