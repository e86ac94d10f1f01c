using Payday.Screens.Shell;

namespace Payday.Screens.Learning;

/// <summary>Where the way leads once what was found has been gone through.</summary>
/// <param name="Name">What it is, in a word or two.</param>
/// <param name="Lead">Leads there.</param>
internal sealed record Onward(string Name, Func<Way> Lead);
