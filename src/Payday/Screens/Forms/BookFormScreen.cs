using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Texts;

namespace Payday.Screens.Forms;

/// <summary>A form that comes to another book: what that changes is shown under the fields before it is written.</summary>
/// <param name="session">The book.</param>
/// <param name="name">The name of the form: a word of its own, the same in every version.</param>
/// <param name="does">What Right does, in a word or two.</param>
/// <param name="means">The same in a sentence.</param>
internal abstract class BookFormScreen(BookSession session, string name, string does, string means) : KeptFormScreen(session, name, does, means)
{
    /// <summary>The book as it is.</summary>
    protected Book Book => Session.Book;

    /// <summary>The book that the form comes to, or why it can't be; null while something is missing.</summary>
    protected abstract Result<Book>? After { get; }

    /// <summary>The first field that is missing, and what is to be done there; asked for only while one is.</summary>
    protected abstract (string Field, string Todo) Missing { get; }

    /// <inheritdoc/>
    protected sealed override IEnumerable<Said> Effect
    {
        get
        {
            // It is asked for with every draw: an amount that is too large beside the others is no reason to end the program.
            try
            {
                return Tried() switch
                {
                    null => [],
                    { Ok: false } refused => [Said.Alert(FaultTexts.Of(refused.Fault, Session.Style))],
                    { } after => [.. Changes(after.Value).Select(change => (Said)change)],
                };
            }
            catch (OverflowException)
            {
                return [Said.Alert(FaultTexts.Of(new AmountFault.TooLarge()))];
            }
        }
    }

    /// <summary>What the book that the form comes to changes, a sentence or two each.</summary>
    protected abstract IEnumerable<string> Changes(Book after);

    /// <summary>What is done once the book is stored; the form is left then.</summary>
    protected virtual void Stored()
    {
    }

    /// <inheritdoc/>
    protected sealed override Way Finish()
    {
        if (Tried() is not { } after)
        {
            return At(Missing.Field, Missing.Todo);
        }

        if (!after.Ok)
        {
            return Stay(FaultTexts.Of(after.Fault, Session.Style));
        }

        Form.Done(after.Value);
        Stored();
        return Way.Back;
    }

    private Result<Book>? Tried()
    {
        try
        {
            return After;
        }
        catch (OverflowException)
        {
            return Result.Refused<Book>(new AmountFault.TooLarge());
        }
    }
}
