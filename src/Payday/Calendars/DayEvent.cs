using NodaTime;

namespace Payday.Calendars;

/// <summary>Something that falls on a whole day.</summary>
/// <param name="Key">What it is known by from export to export, whatever it is called and comes to; no two of one calendar have the same.</param>
/// <param name="Date">The day.</param>
/// <param name="Summary">What it is, in a few words and without amounts.</param>
/// <param name="Description">The amounts, a line each; may be empty.</param>
internal sealed record DayEvent(string Key, LocalDate Date, string Summary, string Description);
