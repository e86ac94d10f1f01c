using System.Collections.Immutable;
using Payday.Core.Drafts;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>A field of a form.</summary>
/// <typeparam name="TPart">The part of a household's draft that the form is of.</typeparam>
internal abstract record SetupField<TPart>
{
    /// <summary>What it is called, in a word or three.</summary>
    public required string Label { get; init; }

    /// <summary>What it is for, in a sentence or two.</summary>
    public required string Help { get; init; }

    /// <summary>Where its value stands in the part, to know a fault of it by.</summary>
    public required DraftPlace Place { get; init; }

    /// <summary>Whether the part can't do without it.</summary>
    public bool Needed { get; init; } = true;

    /// <summary>Whether the part has this field, going by its others.</summary>
    public Func<TPart, SetupFacts, bool> Applies { get; init; } = (_, _) => true;

    /// <summary>Why it can't be changed now, or null.</summary>
    public Func<SetupFacts, TPart, string?> Locked { get; init; } = (_, _) => null;

    /// <summary>What else of the part changes with it.</summary>
    public Func<TPart, TPart> Then { get; init; } = part => part;

    /// <summary>How many characters can be typed.</summary>
    public abstract int MostTyped { get; }

    /// <summary>What holds where nothing stands here, in a word or two; empty for nothing.</summary>
    public string Else { get; init; } = "";

    /// <summary>Whether it may be left empty.</summary>
    public SetupField<TPart> Optional() => this with { Needed = false };

    /// <summary>Whether the part has nothing here.</summary>
    public abstract bool IsEmpty(TPart part, SetupFacts facts);

    /// <summary>What stands here; empty where nothing does.</summary>
    public abstract string Show(TPart part, SetupFacts facts);

    /// <summary>What stands here, to be changed; empty where nothing does.</summary>
    public abstract string Typed(TPart part, SetupFacts facts);

    /// <summary>The part with what was typed.</summary>
    public abstract Result<TPart> Take(TPart part, string text, SetupFacts facts);

    /// <summary>The part with nothing here.</summary>
    public abstract TPart Cleared(TPart part);

    /// <summary>What can be chosen here; empty where something is typed.</summary>
    public abstract ImmutableArray<string> Choices(TPart part, SetupFacts facts);

    /// <summary>Which of the choices stands here; below zero for none of them.</summary>
    public abstract int Chosen(TPart part, SetupFacts facts);

    /// <summary>The part with one of the choices.</summary>
    public abstract TPart Choose(TPart part, int choice, SetupFacts facts);

    /// <summary>Whether both hold the same here.</summary>
    public abstract bool IsSame(TPart one, TPart other);
}
