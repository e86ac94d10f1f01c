using Payday.Core.Drafts;

namespace Payday.Screens.Setup.Lists;

/// <summary>A line, and what it was read as.</summary>
/// <param name="Line">The line, as it was written.</param>
/// <param name="Item">The item, as far as it could be read; null where nothing could.</param>
/// <param name="Fault">Why it can't be taken as it stands, a sentence; null where it can.</param>
internal sealed record LineReading(string Line, ItemDraft? Item, string? Fault);
