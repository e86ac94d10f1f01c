using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Core.CardPurchases;

/// <summary>How the amounts of a list are written: in one way in all its rows, the household's unless only another reads them.</summary>
/// <remarks>
/// A bank writes amounts its own way. Deciding for all rows at once keeps <c>1.234</c> in one row and <c>12,50</c> in the next
/// from being read as two different marks. A minus may stand before the amount, behind it or as parentheses around it (common
/// practice, no source), as U+2212 too, and the household's own currency code or any currency sign beside it.
/// </remarks>
internal sealed class ListAmounts
{
    private readonly Currency currency;

    private ListAmounts(Currency currency, NumberStyle style) => (this.currency, Style) = (currency, style);

    /// <summary>The way in which they are read.</summary>
    public NumberStyle Style { get; }

    /// <summary>Decides how the amounts of some rows are written.</summary>
    /// <param name="rows">The cells of each row that may be an amount.</param>
    /// <param name="currency">The household's.</param>
    /// <param name="own">How the household writes numbers.</param>
    /// <returns>
    /// The household's way; another only where it reads an amount in every row that has one in any way, and the household's
    /// doesn't.
    /// </returns>
    public static ListAmounts Of(IReadOnlyCollection<ImmutableArray<string>> rows, Currency currency, NumberStyle own)
    {
        ListAmounts[] ways = [.. NumberStyle.All.Prepend(own).Distinct().Select(style => new ListAmounts(currency, style))];
        bool[][] read = [.. ways.Select(way => rows.Select(row => row.Any(cell => way.Read(cell).Ok)).ToArray())];
        int most = Enumerable.Range(0, rows.Count).Count(row => read.Any(way => way[row]));
        int best = Array.FindIndex(read, way => way.Count(row => row) == most);
        return ways[Math.Max(best, 0)];
    }

    /// <summary>A cell as an amount.</summary>
    public Result<Money> Read(string cell) => Money.Parse(Plain(cell), currency, Style);

    private string Plain(string cell)
    {
        string text = string.Concat(cell.Where(c => char.GetUnicodeCategory(c) != UnicodeCategory.CurrencySymbol)).Replace('\u2212', '-').Trim();
        text = WithoutCode(text);
        bool isNegative = text is ['(', .., ')'] or [not '-' and not '+', .., '-'];
        return isNegative ? "-" + text.Trim('(', ')', '-').Trim() : text.StartsWith("- ", StringComparison.Ordinal) ? "-" + text[1..].Trim() : text;
    }

    private string WithoutCode(string text) =>
        text.StartsWith(currency.Code, StringComparison.OrdinalIgnoreCase) ? text[currency.Code.Length..].Trim()
        : text.EndsWith(currency.Code, StringComparison.OrdinalIgnoreCase) ? text[..^currency.Code.Length].Trim()
        : text;
}
