namespace Payday.Screens.Learning;

/// <summary>What became of something that was found.</summary>
internal enum ItemState
{
    /// <summary>Nothing yet.</summary>
    Open,

    /// <summary>It is in the household.</summary>
    Taken,

    /// <summary>It is left out.</summary>
    Left,
}
