using Payday.Core.Books;
using Payday.Screens.Shell;
using Payday.Store.Files;
using Payday.Texts;

namespace Payday.Questions;

/// <summary>Asks the questions of a part, and of those that answers lead into, one at a time, until the person leaves or the input ends.</summary>
/// <param name="session">The book: each answer is stored as it is taken.</param>
/// <param name="input">Where answers come from.</param>
/// <param name="output">Where questions go.</param>
internal sealed class Dialogue(BookSession session, LineInput input, SpokenOutput output)
{
    private const string Explain = "?";

    /// <summary>What can always be answered.</summary>
    public const string Always = "Enter takes what is proposed, ? explains, back goes back one question, menu to what there is to do, stop leaves; everything is kept.";

    private readonly List<PartPlace> open = [];
    private string under = "";

    /// <summary>Asks until it ends.</summary>
    /// <param name="first">The outermost part; going back from its first question isn't possible.</param>
    /// <param name="inner">A part to begin in; null for where it was left the last time.</param>
    public void Run(Part first, Part? inner)
    {
        open.Add(new PartPlace(first));
        if (inner is not null)
        {
            open.Add(new PartPlace(inner));
        }
        else
        {
            GoOn();
        }

        while (open.Count > 0 && Ask() is { } question && !output.IsLost && input.Read() is { } answer)
        {
            if (!Answered(question, answer))
            {
                return;
            }
        }
    }

    // Where something was gone on with otherwise since, its own first question is next.
    private void GoOn()
    {
        foreach ((string name, string at) in AskPlace.Of(session.Book).ToList())
        {
            if (open[^1].Part.Open(name) is not { } part)
            {
                break;
            }

            open.Add(new PartPlace(part) { At = part.GoesOnAt(at) });
        }

        if (open.Count > 1)
        {
            output.Say("Going on where it was left; menu leads to what else there is to do.");
        }
    }

    private Question? Ask()
    {
        while (open.Count > 0)
        {
            PartPlace here = open[^1];
            IReadOnlyList<Question> all = here.Part.Questions;
            if (here.Reach(all) is { } question)
            {
                here.Part.Reached(question);
                Keep();
                if (question.Under != under)
                {
                    under = question.Under;
                    output.Say(question.Heading());
                }

                output.Say(question.Text);
                return question;
            }

            output.Say(all.Count == 0 ? here.Part.Empty : "");
            Close();
        }

        return null;
    }

    // Whether to go on.
    private bool Answered(Question question, string answer)
    {
        if (answer.Length > LineInput.Most)
        {
            output.Say($"That answer has more than {LineInput.Most} characters; nothing of it was taken.");
            return true;
        }

        switch (answer.ToUpperInvariant())
        {
            case Explain:
                output.Say(Help(question));
                return true;
            case "BACK":
                Back(question);
                return true;
            case "MENU" when open.Count == 1:
                output.Say(Help(question));
                return true;
            case "MENU":
                open.RemoveRange(1, open.Count - 1);
                return true;
            case "STOP":
                return false;
            default:
                return Took(question, answer);
        }
    }

    private bool Took(Question question, string answer)
    {
        Taken taken;
        try
        {
            taken = question.Take(answer);
        }
        catch (OverflowException)
        {
            taken = new Taken.Refused("The amounts are too large together; nothing was changed.");
        }
        catch (StoreException fault)
        {
            taken = new Taken.Refused(StoreTexts.Of(fault.Fault));
        }

        output.Say(taken.Said);
        PartPlace here = open[^1];
        switch (taken)
        {
            case Taken.Next:
                here.Forward(question);
                break;
            case Taken.To to:
                here.At = to.Id;
                break;
            case Taken.Into into:
                open.Add(new PartPlace(into.Part));
                break;
            case Taken.Done:
                Close();
                break;
            case Taken.Stop:
                return false;
            default:
                break;
        }

        return true;
    }

    private void Back(Question question)
    {
        if (open[^1].Back(question))
        {
            return;
        }

        if (open.Count > 1)
        {
            Close();
        }
        else
        {
            output.Say("There is no question before this one. stop leaves.");
        }
    }

    private void Close()
    {
        open.RemoveAt(open.Count - 1);
        Keep();
    }

    private void Keep()
    {
        Book kept = AskPlace.In(session.Book, [.. open.Skip(1).Select(level => (level.Part.Name, level.At ?? ""))]);
        if (kept != session.Book)
        {
            session.Take(kept);
        }
    }

    private static IEnumerable<string> Help(Question question)
    {
        string shown = string.Join(' ', question.Help.Prepend(question.Text));
        return
        [
            .. question.Help,
            .. question.Words.Select(word => $"{word.Word}: {word.Meaning}"),
            .. WordTexts.On(shown, question.Words.Select(word => word.Word)).Select(word => $"{word.Word}: {word.Meaning}"),
            Always,
        ];
    }
}
