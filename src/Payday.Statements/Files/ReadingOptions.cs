using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Statements.Files;

/// <summary>What is known before a file is read.</summary>
public sealed record ReadingOptions
{
    /// <summary>Nothing is known.</summary>
    public static ReadingOptions None { get; } = new();

    /// <summary>The household's currency, taken where a file names none.</summary>
    public Currency? Currency { get; init; }

    /// <summary>Today: a reading of dates that puts one after it (by more than a day) is wrong. Null where it isn't to be used.</summary>
    public LocalDate? Today { get; init; }

    /// <summary>How files were read before; one whose header is this file's is used instead of asking.</summary>
    public ImmutableArray<CsvProfile> Profiles { get; init; } = [];
}
