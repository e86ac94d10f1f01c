namespace Payday.Core.Books;

/// <summary>What a line of the bank's becomes in the book.</summary>
public enum LineUse
{
    /// <summary>Money for a purpose: a due of a bill or debt, a purchase by card for a pot or from the buffer; what came in is a refund of it.</summary>
    For,

    /// <summary>Income of a source, or of a name of its own.</summary>
    Income,

    /// <summary>A charge of the bank, from the buffer.</summary>
    Fee,

    /// <summary>Interest of the account, to or from the buffer.</summary>
    Interest,

    /// <summary>Given to the household, to be placed; or by it, from the buffer.</summary>
    Gift,

    /// <summary>From an account that is not in this book, to be placed; or to one, from the buffer.</summary>
    Transfer,

    /// <summary>Nothing: it is left.</summary>
    Leave,

    /// <summary>Cash: fetched for a cash pot or as loose notes where it went out, brought from there where it came in.</summary>
    Cash,

    /// <summary>Cash that pots owed back, brought to the bank.</summary>
    Return,
}
