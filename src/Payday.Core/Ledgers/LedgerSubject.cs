namespace Payday.Core.Ledgers;

/// <summary>What movements can be about: a source, bill, debt or pot of the household.</summary>
/// <param name="Kind">Which list it is in.</param>
/// <param name="Id">Its id.</param>
public readonly record struct LedgerSubject(SubjectKind Kind, string Id)
{
    /// <summary>Whether a movement takes from it, gives to it, or is paid or spent for it.</summary>
    public bool IsIn(Movement movement)
    {
        ArgumentNullException.ThrowIfNull(movement);
        return IsAt(movement.From) || IsAt(movement.To);
    }

    private bool IsAt(LedgerEnd end) => end switch
    {
        LedgerEnd.Held held => held.Purpose.Id == Id && Kind == (held.Purpose.Kind == PurposeKind.SetAside ? SubjectKind.Bill : SubjectKind.Pot),
        LedgerEnd.Owed owed => Kind == SubjectKind.Debt && owed.DebtId == Id,
        LedgerEnd.Outside outside => outside.Id == Id && Kind == Of(outside.Kind),
        _ => false,
    };

    private static SubjectKind? Of(OutsideKind kind) => kind switch
    {
        OutsideKind.Opening => null,
        OutsideKind.Source => SubjectKind.Source,
        OutsideKind.Bill => SubjectKind.Bill,
        OutsideKind.Interest => SubjectKind.Debt,
        _ => SubjectKind.Pot,
    };
}

/// <summary>The lists of a household that movements can be about.</summary>
public enum SubjectKind
{
    /// <summary>An income source.</summary>
    Source,

    /// <summary>A bill.</summary>
    Bill,

    /// <summary>A debt.</summary>
    Debt,

    /// <summary>A pot.</summary>
    Pot,
}
