using System.Collections.Immutable;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Screens.Setup.Fields;
using Payday.Texts;

namespace Payday.Screens.Setup.Forms;

/// <summary>
/// The values of a form. A change is stored at once when nothing needed is missing; until then it is kept here.
/// </summary>
/// <typeparam name="TPart">The part of a household's draft that it is of.</typeparam>
/// <param name="work">The household.</param>
/// <param name="fields">The fields.</param>
/// <param name="values">What stands in them.</param>
internal abstract class ItemForm<TPart>(SetupWork work, ImmutableArray<SetupField<TPart>> fields, TPart values) : IItemForm
    where TPart : class
{
    // A screen asks for them row by row; they are as they were until something is changed.
    private (TPart Values, HouseholdDraft Draft, ImmutableArray<FormRow> Rows)? shown;

    /// <inheritdoc/>
    public ImmutableArray<FormRow> Rows
    {
        get
        {
            if (shown is not { } known || !ReferenceEquals(known.Values, Values) || !ReferenceEquals(known.Draft, work.Draft))
            {
                shown = (Values, work.Draft, [.. There.Select(Row)]);
            }

            return shown.Value.Rows;
        }
    }

    /// <inheritdoc/>
    public abstract bool IsNew { get; }

    /// <inheritdoc/>
    public bool IsStored { get; protected set; } = true;

    /// <inheritdoc/>
    public abstract bool IsBegun { get; }

    /// <summary>The household.</summary>
    protected SetupWork Work => work;

    /// <summary>What stands in the fields.</summary>
    protected TPart Values { get; set; } = values;

    /// <summary>Whether it is stored whatever is still missing.</summary>
    protected abstract bool TakesParts { get; }

    private ImmutableArray<SetupField<TPart>> There => [.. fields.Where(one => one.Applies(Values, work))];

    /// <inheritdoc/>
    public string? Type(int row, string text)
    {
        SetupField<TPart> field = There[row];
        if (text.Trim().Length == 0 && !field.Needed)
        {
            return Change(field, field.Cleared(Values));
        }

        Result<TPart> next = field.Take(Values, text, work);
        return next.Ok ? Change(field, next.Value) : FormTexts.Of(next.Fault, work.Style);
    }

    /// <inheritdoc/>
    public string? Choose(int row, int choice) => Change(There[row], There[row].Choose(Values, choice, work));

    /// <inheritdoc/>
    public abstract void Restart();

    /// <summary>Stores the values as they stand, where nothing needed is missing; else they are kept as begun.</summary>
    /// <returns>Why they can't be stored, or null.</returns>
    public string? Settle()
    {
        (HouseholdDraft household, DraftPlace place) = Placed(Stripped(Values));
        return There.Where(field => !IsMissing(field, Values)).Select(field => work.FaultAt(household, place.Then(field.Place))).FirstOrDefault(fault => fault is not null)
            ?? Change(There[0], Values);
    }

    /// <summary>Changes a field that may have no row.</summary>
    public string? Type(SetupField<TPart> field, string text) => Type(There.IndexOf(field), text);

    /// <summary>The household with these values in it, and where they stand in it.</summary>
    protected abstract (HouseholdDraft Household, DraftPlace Place) Placed(TPart next);

    /// <summary>Stores a household with these values in it.</summary>
    /// <param name="household">The household.</param>
    /// <param name="place">Where the values stand.</param>
    /// <param name="changed">Where what was changed stands.</param>
    /// <returns>Why it was not stored, or null.</returns>
    protected abstract string? Store(HouseholdDraft household, DraftPlace place, DraftPlace changed);

    /// <summary>The values as they are once they are stored.</summary>
    protected virtual TPart Stored(TPart next) => next;

    /// <summary>Keeps values that aren't complete yet.</summary>
    protected virtual void Keep()
    {
    }

    private string? Change(SetupField<TPart> field, TPart next)
    {
        next = field.IsSame(Values, next) ? next : field.Then(next);
        (HouseholdDraft household, DraftPlace place) = Placed(Stripped(next));
        DraftPlace changed = place.Then(field.Place);
        bool isStored = TakesParts || !fields.Any(other => IsMissing(other, next));
        string? fault = isStored ? Store(household, place, changed) : work.FaultAt(household, changed);
        if (fault is not null)
        {
            return fault;
        }

        Values = isStored ? Stored(next) : next;
        IsStored = isStored;
        if (!isStored)
        {
            Keep();
        }

        return null;
    }

    private bool IsMissing(SetupField<TPart> field, TPart part) => field.Applies(part, work) && field.Needed && field.IsEmpty(part, work);

    private FormRow Row(SetupField<TPart> field)
    {
        ImmutableArray<string> choices = field.Choices(Values, work);
        int chosen = field.Chosen(Values, work);
        string shown = field.IsEmpty(Values, work) && chosen >= 0 ? choices[chosen] : field.Show(Values, work);
        return new(
            field.Label, field.Help, shown.Length == 0 ? field.Else : shown, field.Typed(Values, work), field.MostTyped,
            IsMissing(field, Values), field.Locked(work, Values), choices, chosen);
    }

    // What belongs to another kind of schedule or pot stays in the form, should the person come back to it, and goes no further.
    private TPart Stripped(TPart part)
    {
        HashSet<DraftPlace> kept = [.. fields.Where(field => field.Applies(part, work)).Select(field => field.Place)];
        return fields.Where(field => !kept.Contains(field.Place)).Aggregate(part, (rest, field) => field.Cleared(rest));
    }
}
