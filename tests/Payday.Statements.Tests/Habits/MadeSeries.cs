using NodaTime;
using Payday.Statements.Habits;
using Payday.Statements.Lines;

namespace Payday.Statements.Tests.Habits;

/// <summary>A series that was put into a made history.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Unit">Weeks or months.</param>
/// <param name="Every">Every so many.</param>
/// <param name="Lines">The lines it left.</param>
/// <param name="StepAt">The day of a lasting change of the amount, or null.</param>
/// <param name="StoppedAt">The last line's day, where it stopped before the end; else null.</param>
internal sealed record MadeSeries(string Name, RhythmUnit Unit, int Every, List<StatementLine> Lines, LocalDate? StepAt, LocalDate? StoppedAt);
