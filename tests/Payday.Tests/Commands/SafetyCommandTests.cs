using Payday.Store;

namespace Payday.Tests.Commands;

public class SafetyCommandTests
{
    [Fact]
    public void Check_SoundStore_SaysWhatItLookedAt()
    {
        using TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();

        Assert.Equal(["Checked: 2 changes, 63 ledger lines, 1 closed payday, 1 backup.", "Nothing is wrong."], shell.Run("check").Fine().Lines);
        Assert.StartsWith("{\"version\":1,\"sound\":true,\"changes\":2,", shell.Run("check", "--json").Fine().Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_DamageInTheMiddleOfTheJournal_IsFoundAndMended()
    {
        using TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();
        byte[] journal = File.ReadAllBytes(shell.Data.Journal);
        journal[500] ^= 1;
        File.WriteAllBytes(shell.Data.Journal, journal);

        Ran found = shell.Run("check");
        Assert.Equal(1, found.Exit);
        Assert.Contains("! journal: ", found.Out, StringComparison.Ordinal);

        shell.Run("check", "--mend").Fine();
        Assert.Equal("Nothing is wrong.", shell.Run("check").Fine().Lines[^1]);
    }

    [Fact]
    public void Show_DatabaseGone_IsRebuiltAndSaysSo()
    {
        using TestShell shell = TestShell.WithDemo();
        string before = shell.Run("show", "ledger").Fine().Out;
        File.Delete(shell.Data.Database);

        Ran ran = shell.Run("show", "ledger");

        Assert.Equal((0, before), (ran.Exit, ran.Out));
        Assert.StartsWith($"payday: note: {shell.Data.Database} is missing. It was rebuilt from the journal, up to change 1 of ", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Show_WhileAnotherHasIt_IsALookAndWritingIsRefused()
    {
        using TestShell shell = TestShell.WithDemo();
        string before = shell.Run("show", "pots").Fine().Out;
        using BookStore other = BookStore.Open(shell.Data);

        Ran look = shell.Run("show", "pots");

        Assert.Equal((0, before), (look.Exit, look.Out));
        Assert.StartsWith($"payday: note: Another Payday has {shell.Data.Path} open (process ", look.Error, StringComparison.Ordinal);
        Assert.EndsWith("This is a look at what is stored.\n", look.Error, StringComparison.Ordinal);
        Assert.Equal(1, shell.Run("run", "--accept").Exit);
    }

    [Fact]
    public void Restore_OlderBackup_ShowsWhatWouldChangeAndDoesItWhenAccepted()
    {
        using TestShell shell = TestShell.WithDemo();
        string before = shell.Run("show", "ledger").Fine().Out;
        shell.Run("run", "--accept").Fine();
        string backup = Path.GetFileName(Assert.Single(Directory.GetFiles(shell.Data.Backups)));

        Ran look = shell.Run("restore", backup).Fine();
        Assert.Contains("It would take off 39 ledger lines and 1 closed payday.", look.Out.Replace("\n  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(63, int.Parse(shell.Run("check").Fine().Lines[0].Split(", ")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture));

        shell.Run("restore", backup, "--accept").Fine();
        Assert.Equal(before, shell.Run("show", "ledger").Fine().Out);
    }

    [Fact]
    public void Restore_TakenBack_BringsWhatWasKeptAside()
    {
        using TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();
        string after = shell.Run("show", "ledger").Fine().Out;
        shell.Run("restore", Path.GetFileName(Assert.Single(Directory.GetFiles(shell.Data.Backups))), "--accept").Fine();
        Assert.NotEqual(after, shell.Run("show", "ledger").Fine().Out);

        string aside = Path.GetFileName(Assert.Single(Directory.GetFiles(shell.Data.Aside, "*.journal")));
        Assert.EndsWith(aside, shell.Run("restore").Fine().Lines[^2], StringComparison.Ordinal);
        shell.Run("restore", aside, "--accept").Fine();

        Assert.Equal(after, shell.Run("show", "ledger").Fine().Out);
        Assert.Equal("Nothing is wrong.", shell.Run("check").Fine().Lines[^1]);
    }

    [Fact]
    public void Run_SecondPlaceOfBackupsGone_WarnsAndClosesAllTheSame()
    {
        using TestShell shell = TestShell.WithDemo();
        string stick = shell.In("stick");
        Directory.CreateDirectory(stick);
        shell.Run("backup", stick, "--always").Fine();
        Directory.Delete(stick, recursive: true);

        Ran ran = shell.Run("run", "--accept");

        Assert.Equal(0, ran.Exit);
        Assert.Equal($"payday: note: {stick} is not there, so there is no backup in it. Is its disk plugged in? What you enter is stored all the same.\n", ran.Error);
    }

    [Fact]
    public void Backup_AlwaysToAFolderWithBlanksInItsName_IsThatFolder()
    {
        using TestShell shell = TestShell.WithDemo();
        string stick = shell.In("stick ");
        Directory.CreateDirectory(stick);

        shell.Run("backup", stick, "--always").Fine();
        File.Delete(Assert.Single(Directory.GetFiles(stick)));
        shell.Run("run", "--accept").Fine();

        Assert.Single(Directory.GetFiles(stick));
        Assert.Equal(2, shell.Run("backup", "", "--always").Exit);
    }

    [Fact]
    public void Restore_FileThatIsNoBackup_SaysWhatItIs()
    {
        using TestShell shell = TestShell.WithDemo();
        Directory.CreateDirectory(shell.In("letters"));
        File.WriteAllText(shell.In("letter"), "letter");

        Assert.EndsWith("letters is a folder, not a backup; nothing was changed. See what there is with payday restore.\n", Joined(shell.Run("restore", shell.In("letters"))), StringComparison.Ordinal);
        Assert.EndsWith("letter is damaged; nothing was changed. See what there is with payday restore.\n", Joined(shell.Run("restore", shell.In("letter"))), StringComparison.Ordinal);
        Assert.EndsWith("nothing is not there, or is damaged; nothing was changed. See what there is with payday restore.\n", Joined(shell.Run("restore", shell.In("nothing"))), StringComparison.Ordinal);
    }

    [Fact]
    public void Restore_BackupOfAnotherHousehold_SaysWhose()
    {
        using TestShell shell = TestShell.WithDemo();
        using TestShell other = TestShell.WithDemo();
        Directory.CreateDirectory(other.In("stick"));
        other.Run("backup", other.In("stick")).Fine();

        Ran look = shell.Run("restore", Directory.GetFiles(other.In("stick")).Single()).Fine();

        Assert.Contains("It is of another household, Fernhollow house, which would take the place of the one here.", look.Out.Replace("\n  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    private static string Joined(Ran ran) => ran.Error.Replace("\n  ", " ", StringComparison.Ordinal);
}
