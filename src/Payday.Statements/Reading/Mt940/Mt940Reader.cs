using System.Collections.Immutable;
using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Mt940;

/// <summary>Reads SWIFT MT940: customer statement messages, several in a file, pages of one joined.</summary>
internal static class Mt940Reader
{
    /// <summary>Reads a file.</summary>
    /// <param name="text">All of it.</param>
    public static StatementFile Read(string text)
    {
        var faults = new FaultList();
        List<Mt940Page> pages = Pages(text, out bool tooMany);
        if (tooMany)
        {
            return StatementFile.Refused(FaultKind.TooManyLines, wanted: $"{ReadingLimits.MostLines}");
        }

        ImmutableArray<Statement> statements = [.. Joined(pages).Select(page => Mt940Statement.Of(page, faults)).OfType<Statement>()];
        if (statements.IsEmpty && faults.Count == 0)
        {
            faults.Add(FaultKind.NoStatement, 0);
        }

        return new StatementFile(statements, faults.ToImmutable());
    }

    private static List<Mt940Page> Pages(string text, out bool tooMany)
    {
        var pages = new List<Mt940Page>();
        Mt940Page? page = null;
        int lines = 0;
        foreach (Mt940Field field in Mt940Fields.Of(text))
        {
            bool opens = field.Tag is "60F" or "60M";
            if (page is null || field.Tag is "20" or "" || (opens && page.Opening is not null))
            {
                var next = new Mt940Page(field.Place);
                if (opens && page is not null)
                {
                    next.Id = page.Id;
                    next.Account = page.Account;
                    next.Number = page.Number;
                }

                page = next;
                pages.Add(page);
            }

            Take(field, page);
            lines += field.Tag == "61" ? 1 : 0;
            if (lines > ReadingLimits.MostLines || pages.Count > 4 * ReadingLimits.MostStatements)
            {
                tooMany = true;
                return [];
            }
        }

        tooMany = false;
        return pages.FindAll(one => one.HasContent);
    }

    private static void Take(Mt940Field field, Mt940Page page)
    {
        switch (field.Tag)
        {
            case "20":
                page.Id = field.Value;
                break;
            case "25" or "25P":
                page.Account = CleanText.Of(field.Value).Replace(" ", "", StringComparison.Ordinal);
                break;
            case "28" or "28C":
                page.Number = field.Value;
                break;
            case "60F" or "60M":
                page.Opening = field;
                break;
            case "62F" or "62M":
                page.Closing = field;
                break;
            case "61" when Mt940Entry.Of(field) is { } entry:
                page.Entries.Add(entry);
                break;
            case "61":
                page.Broken.Add(field);
                break;
            case "86" when page is { Closing: null, Entries: [.., var last] }:
                last.Texts.Add(field.Value);
                break;
            default:
                break;
        }
    }

    private static List<Mt940Page> Joined(List<Mt940Page> pages)
    {
        var joined = new List<Mt940Page>();
        foreach (Mt940Page page in pages)
        {
            if (joined.Count > 0 && joined[^1].GoesOnIn(page))
            {
                joined[^1].TakeIn(page);
            }
            else
            {
                joined.Add(page);
            }
        }

        return joined;
    }
}
