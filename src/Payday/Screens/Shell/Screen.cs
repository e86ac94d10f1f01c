using System.Drawing;
using Payday.Core.Households;
using Payday.Screens.Frames;

namespace Payday.Screens.Shell;

/// <summary>A screen: draws itself as text for a size, and names its keys.</summary>
internal abstract class Screen
{
    /// <summary>What the help page calls it.</summary>
    public abstract string Title { get; }

    /// <summary>The keys that do something here now; the most important first.</summary>
    public abstract IReadOnlyList<Binding> Bindings { get; }

    /// <summary>Words used here and what they mean, for the help page.</summary>
    public virtual IReadOnlyList<(string Word, string Meaning)> Words => [];

    /// <summary>A sentence on what is wrong or to be known first; gone with the next key.</summary>
    public string Message
    {
        get;
        set => (field, IsNews) = (value, false);
    } = "";

    /// <summary>Says what was just done, in the place of <see cref="Message"/>: it is as it should be, so it doesn't look like an alarm.</summary>
    public string News
    {
        set
        {
            Message = value;
            IsNews = true;
        }
    }

    /// <summary>Whether what is said was done, and nothing is wrong.</summary>
    public bool IsNews { get; private set; }

    /// <summary>How what is said shows.</summary>
    protected Ink MessageInk => IsNews ? Ink.Done : Ink.Alert;

    /// <summary>Says what was done, or why it wasn't.</summary>
    /// <param name="done">What was done.</param>
    /// <param name="wrong">Why it wasn't; null where it was.</param>
    protected void Tell(string done, string? wrong)
    {
        if (wrong is null)
        {
            News = done;
        }
        else
        {
            Message = wrong;
        }
    }

    /// <summary>Shows its beginning again, as when it is led to anew.</summary>
    public virtual void ToTop()
    {
    }

    /// <summary>The question at leaving the program, where this is the first screen: it knows what is kept.</summary>
    public virtual LeaveScreen Leaving => new();

    /// <summary>The look that is chosen, where this is the first screen.</summary>
    public virtual ScreenLook Look => ScreenLook.Automatic;

    /// <summary>The screen as text.</summary>
    public abstract TextFrame Draw(Size size);

    /// <summary>How many lines above the keys stay in view while something is typed.</summary>
    /// <param name="width">The screen's width in columns.</param>
    public virtual int Standing(int width) => 0;

    /// <summary>Takes pasted text, of several lines or one; false where nothing here takes any.</summary>
    public virtual bool Pasted(string text) => false;

    /// <summary>Takes pasted text and says where that leads.</summary>
    public virtual Way TakesPaste(string text)
    {
        Pasted(text);
        return Way.Stay;
    }

    /// <summary>What typing a character that is no key of the screen does: null for nothing.</summary>
    public virtual CellEdit? Typing(string text) => null;
}
