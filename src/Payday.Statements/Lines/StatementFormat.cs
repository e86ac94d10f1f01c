namespace Payday.Statements.Lines;

/// <summary>What a statement came in.</summary>
public enum StatementFormat
{
    /// <summary>Cells in lines, as any bank exports them.</summary>
    Csv,

    /// <summary>Open Financial Exchange, 1.x (SGML) and 2.x (XML).</summary>
    Ofx,

    /// <summary>ISO 20022 camt.053: the bank's statement of a closed period.</summary>
    Camt053,

    /// <summary>ISO 20022 camt.052: a report that isn't a closed statement.</summary>
    Camt052,

    /// <summary>SWIFT MT940.</summary>
    Mt940,
}
