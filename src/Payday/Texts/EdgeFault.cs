using Payday.Core.Faults;

namespace Payday.Texts;

/// <summary>What the program's own edge refuses: an argument, a file, a printer. What is said of its cases is in <see cref="EdgeTexts"/>.</summary>
internal abstract record EdgeFault : Fault;
