using Payday.Commands;
using Payday.FaultyScreen;
using Payday.Screens.Shell;
using Payday.Store;
using Payday.Store.Folders;

// usage: faulty-screen FOLDER: has the folder open, as the full screen does, and a fault behind each key.
CommandShell shell = CommandShell.OfProcess();
return CommandLine.Tell(shell, CommandTree.Build(shell).Parse([]), json: false, codeAnswers: false, () =>
{
    using BookStore store = BookStore.Open(new StoreFolder(args[0]));
    FullScreen.Run(new FaultyScreen(), _ => Way.Stay);
    return new Answer.Done([], "{}");
});
