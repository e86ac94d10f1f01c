namespace Payday.Statements.Reading.Csv;

/// <summary>What a column's name hints at.</summary>
internal enum CsvRole
{
    None,
    Date,
    ValueDate,
    Amount,
    Out,
    In,
    Direction,
    Balance,
    Currency,
    Party,
    PartyAccount,
    Text,
    OwnAccount,
    BankId,
    Cheque,
    Status,
    Kind,
    Mandate,
    Reference,
    Number,
}
