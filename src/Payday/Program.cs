using Payday.Commands;

return CommandLine.Run(args, CommandShell.OfProcess());
