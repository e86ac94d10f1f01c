using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Drafts;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>Dates with blanks between them.</summary>
internal sealed class DatesType : FieldType<ImmutableArray<LocalDate>?>
{
    /// <inheritdoc/>
    public override int MostTyped => Shell.CellEdit.Long;

    /// <inheritdoc/>
    public override string Show(ImmutableArray<LocalDate>? value, SetupFacts facts) => string.Join(' ', value!.Value.Select(LocalDatePattern.Iso.Format));

    /// <inheritdoc/>
    public override Result<ImmutableArray<LocalDate>?> Take(string text, SetupFacts facts)
    {
        // A date with its month's name has blanks in it.
        char[] between = text.Any(char.IsLetter) ? [',', ';'] : [' ', ',', ';'];
        string[] words = text.Split(between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var dates = new SortedSet<LocalDate>();
        foreach (string word in words)
        {
            Result<LocalDate?> date = DateType.One(word, facts);
            if (!date.Ok)
            {
                return Result.Refused<ImmutableArray<LocalDate>?>(new TypedFault.NotADate(word, date.Fault!));
            }

            dates.Add(date.Value!.Value);
        }

        return dates.Count == 0
            ? Result.Refused<ImmutableArray<LocalDate>?>(new TypedFault.NoDates())
            : Result.Of<ImmutableArray<LocalDate>?>([.. dates]);
    }
}
