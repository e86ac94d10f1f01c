namespace Payday.Statements.Reading.Ofx;

/// <summary>What a piece of an OFX text is.</summary>
internal enum OfxTokenKind
{
    /// <summary>An opening tag: of a group, or of a value, which then stands with it.</summary>
    Open,

    /// <summary>A closing tag, which values may lack.</summary>
    Close,
}
