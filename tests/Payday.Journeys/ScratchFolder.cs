namespace Payday.Journeys;

/// <summary>A folder for one journey: what the program works in, keeps its book in and puts temporary files in.</summary>
internal sealed class ScratchFolder : IDisposable
{
    private static readonly Lazy<string> Demo = new(() =>
    {
        string made = Directory.CreateTempSubdirectory("payday-journeys-demo-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(made, recursive: true);
        ProgramUnderTest.Run("import", ProgramUnderTest.DemoFile, "--data", Path.Combine(made, "data"));
        return Path.Combine(made, "data");
    });

    private readonly string path = Directory.CreateTempSubdirectory("payday-journey-").FullName;

    public ScratchFolder()
    {
        Directory.CreateDirectory(Temporary);
        Directory.CreateDirectory(Commands);
    }

    /// <summary>The data folder; nothing is there to begin with.</summary>
    public string Data => In("data");

    /// <summary>Where the program is told to put temporary files.</summary>
    public string Temporary => In("tmp");

    /// <summary>A folder that is searched for commands before all others.</summary>
    public string Commands => In("bin");

    /// <summary>The folders of demo households that are there now.</summary>
    public string[] Demos => Directory.GetDirectories(Temporary, "payday-demo-*");

    public string In(string name) => Path.Combine(path, name);

    /// <summary>Stores the demo household in the data folder.</summary>
    public ScratchFolder WithDemoHousehold()
    {
        // What the program makes of it is the same each time, so it is made once.
        Copy(Demo.Value, Data);
        return this;
    }

    /// <summary>A command that keeps what it is given in a file.</summary>
    /// <returns>The file.</returns>
    public string WithCommandThatKeeps(string name)
    {
        string kept = In(name + ".kept");
        string command = Path.Combine(Commands, name);
        File.WriteAllText(command, $"#!/bin/sh\ncat >'{kept}'\n");
        File.SetUnixFileMode(command, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        return kept;
    }

    // With the rights that files and folders have there.
    private static void Copy(string from, string to)
    {
        Directory.CreateDirectory(to, File.GetUnixFileMode(from));
        foreach (string folder in Directory.GetDirectories(from))
        {
            Copy(folder, Path.Combine(to, Path.GetFileName(folder)));
        }

        foreach (string file in Directory.GetFiles(from))
        {
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
        }
    }

    // A program whose terminal has just gone may still be taking away the demo household it was looking at.
    public void Dispose()
    {
        for (int left = 50; Directory.Exists(path); left--)
        {
            try
            {
                Directory.Delete(path, recursive: true);
            }
            catch (IOException) when (left > 0)
            {
                Thread.Sleep(100);
            }
        }
    }
}
