using System.Collections.Immutable;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>What a field of a form holds: how it is shown, typed and read.</summary>
/// <typeparam name="T">The value; null where there is none.</typeparam>
internal abstract class FieldType<T>
{
    /// <summary>The value, which is there, as the form shows it.</summary>
    public abstract string Show(T value, SetupFacts facts);

    /// <summary>Reads what was typed; whether it is one that fits is for the check of the household to say.</summary>
    public abstract Result<T> Take(string text, SetupFacts facts);

    /// <summary>The value, which is there, as it stands there to be changed.</summary>
    public virtual string Typed(T value, SetupFacts facts) => Show(value, facts);

    /// <summary>How many characters can be typed.</summary>
    public virtual int MostTyped => Shell.CellEdit.Usual;

    /// <summary>What can be chosen; empty where something is typed.</summary>
    public virtual ImmutableArray<Choice<T>> Choices(SetupFacts facts) => [];
}
