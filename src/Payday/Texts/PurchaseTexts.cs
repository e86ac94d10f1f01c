using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.CardPurchases;
using Payday.Store.Texts;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of card purchases that can't be entered, one or a list.</summary>
internal static class PurchaseTexts
{
    /// <summary>One sentence.</summary>
    public static string Of(PurchaseFault fault, NumberStyle style) => fault switch
    {
        PurchaseFault.Zero => "The amount is zero; write what the card paid, or below zero what came back.",
        PurchaseFault.NoSuchPot no => $"There is no pot '{no.PotId}'.",
        PurchaseFault.BeforeStart before => $"{DateText.Day(before.Date)} is before the household began, {DateText.Day(before.Start)}.",
        PurchaseFault.BufferHasLess less =>
            $"The buffer has {less.Has.ToString(style)}, less than {less.Amount.ToString(style)}; enter what it has, and the rest on a pot.",
        PurchaseFault.PotHasLess less =>
            $"{less.Pot} has {less.Has.ToString(style)}, less than {less.Amount.ToString(style)}; enter what it has, and the rest on another pot or the buffer.",
        PurchaseFault.PotHasNothing nothing =>
            $"{nothing.Pot} has nothing to pay {nothing.Amount.ToString(style)} with; enter it on another pot or the buffer.",
        PurchaseFault.SamePotTwice twice => $"{twice.Pot ?? "The buffer"} is there twice; add its parts up to one.",
        PurchaseFault.BothWays => "Some parts are below zero and some above; enter what came back by itself, as a refund.",
        PurchaseFault.PartsDiffer differ => $"The parts come to {differ.Parts.ToString(style)}, not to {differ.Amount.ToString(style)}.",
        PurchaseFault.RestTwice => "Two pots are without an amount; only one can have the rest.",
        PurchaseFault.RestOfUnknown => "One pot has the rest; say what was paid in all, or give it an amount too.",
        PurchaseFault.NothingLeft nothing => $"The other parts come to {nothing.Parts.ToString(style)}; of {nothing.Amount.ToString(style)} nothing is left for the last.",
        PurchaseFault.NoSuchCard no => $"There is no debt '{no.Card}' whose card could have paid.",
        PurchaseFault.RefundUnchangeable => "A refund can't be changed; undo it, and enter it again.",
        PurchaseFault.RefundNotAboveZero => "A refund is above zero.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>One sentence, with its line in front where it is of one.</summary>
    public static string Of(ListFault fault, NumberStyle style) => fault switch
    {
        ListFault.AtLine line => string.Create(CultureInfo.InvariantCulture, $"Line {line.Number}: {FaultTexts.Of(line.What, style)}"),
        ListFault.TooManyLines many => string.Create(CultureInfo.InvariantCulture, $"The list has {many.Lines} lines, more than {many.Most}; enter it in parts."),
        ListFault.TooFewCells => $"write date, amount and text, such as {Example(style)}.",
        ListFault.NoDate no => $"'{Echo.Of(no.Cell)}': {FaultTexts.Of(no.Why, style)}",
        ListFault.StillToCome => DateTexts.StillToCome,
        ListFault.TwoAmounts two =>
            $"both '{Echo.Of(two.First)}' and '{Echo.Of(two.Second)}' can be its amount; put an amount with a comma in it in quotes, or leave the line out.",
        ListFault.Zero => "the amount is zero; leave the line out.",
        ListFault.NoPot => "no pot is known for it; pick one, or leave the line out.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>A line of a list as this household would write it.</summary>
    public static string Example(NumberStyle style) =>
        string.Join(style.DecimalMark == "," ? "; " : ", ", "2026-03-07", style.Written("12.50"), "Corner shop");
}
