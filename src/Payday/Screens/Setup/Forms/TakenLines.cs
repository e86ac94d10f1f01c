using System.Collections.Immutable;
using Payday.Core.Drafts;

namespace Payday.Screens.Setup.Forms;

/// <summary>Items that were taken from lines at once.</summary>
/// <param name="List">Their list.</param>
/// <param name="Lines">The lines, as they were written.</param>
/// <param name="Names">The names of the items, in the order of the lines.</param>
internal sealed record TakenLines(DraftMember List, ImmutableArray<string> Lines, ImmutableArray<string> Names);
