using System.IO.Hashing;
using System.Text;

namespace Payday.Calendars;

/// <summary>The unique identifier of an event (RFC 5545, 3.8.4.7).</summary>
internal static class EventId
{
    /// <summary>A UUID as RFC 7986, 5.3, recommends it, that tells nothing of the household.</summary>
    /// <param name="book">Which book it is of, so that those of two households differ.</param>
    /// <param name="key">What the event is known by in that book.</param>
    /// <returns>The same for the same two texts, always: of version 8 (RFC 9562, 5.8), its bits being a hash of both.</returns>
    public static string Of(string book, string key)
    {
        byte[] hash = XxHash128.Hash(Encoding.UTF8.GetBytes(book + "\n" + key));
        hash[6] = (byte)(hash[6] & 0x0F | 0x80);
        hash[8] = (byte)(hash[8] & 0x3F | 0x80);
        return new Guid(hash, bigEndian: true).ToString("D");
    }
}
