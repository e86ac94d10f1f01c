using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Routines;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>Reads the decisions about the account and the bank that a routine has one of each, into its draft; <c>usual</c> goes back to what is proposed.</summary>
internal static class CashInput
{
    /// <summary><c>--buffer AMOUNT</c>: what the account's buffer gives to this payday.</summary>
    public static Result<RoutineDraft> FromBuffer(Book book, RoutineDraft draft, string? buffer)
    {
        if (buffer is null or DecisionInput.Usual)
        {
            return Result.Of(buffer is null ? draft : draft with { FromBuffer = null });
        }

        Result<Money> given = CommandInput.Amount("--buffer", buffer, book.Household.Currency, book.Household.Settings.Numbers);
        return given.Ok ? Result.Of(draft with { FromBuffer = given.Value }) : Result.Refused<RoutineDraft>(given.Fault);
    }

    /// <summary><c>--overdraft AMOUNT</c>: what pays off an overdraft; no more than there is of one.</summary>
    public static Result<RoutineDraft> ToOverdraft(Book book, RoutineDraft draft, string? overdraft)
    {
        if (overdraft is null or DecisionInput.Usual)
        {
            return Result.Of(overdraft is null ? draft : draft with { ToOverdraft = null });
        }

        NumberStyle style = book.Household.Settings.Numbers;
        Result<Money> paid = CommandInput.Amount("--overdraft", overdraft, book.Household.Currency, style);
        return !paid.Ok ? Result.Refused<RoutineDraft>(paid.Fault)
            : paid.Value > book.Ledger.Balances.Overdrawn ? Result.Refused<RoutineDraft>(new ArgumentFault.OverdraftLess(book.Ledger.Balances.Overdrawn))
            : Result.Of(draft with { ToOverdraft = paid.Value });
    }

    /// <summary><c>--bank BANK</c>: a teller, the usual machine, or one with its notes and its limit each time.</summary>
    public static Result<RoutineDraft> FromBank(HouseholdSettings settings, RoutineDraft draft, string? bank)
    {
        switch (bank?.Trim().ToUpperInvariant())
        {
            case null:
                return Result.Of(draft);
            case "USUAL":
                return Result.Of(draft with { AsksATeller = false, Machine = null });
            case "TELLER":
                return Result.Of(draft with { AsksATeller = settings.Bank is CashSource.Machine, Machine = null });
            case "MACHINE" when settings.Bank is CashSource.Machine:
                return Result.Of(draft with { AsksATeller = false, Machine = null });
            case "MACHINE":
                return FromBank(settings, draft, MachineText.Usual(settings.Cash, settings.Numbers));
            default:
                Result<CashSource.Machine> machine = MachineText.Read(bank, settings.Cash, settings.Numbers);
                return machine.Ok ? Result.Of(draft with { AsksATeller = false, Machine = machine.Value }) : Result.Refused<RoutineDraft>(new ArgumentFault.Of($"--bank {bank}", machine.Fault));
        }
    }
}
