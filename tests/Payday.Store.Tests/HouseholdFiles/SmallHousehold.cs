namespace Payday.Store.Tests.HouseholdFiles;

/// <summary>A household file with one of everything, as the program writes it, to break in tests.</summary>
internal static class SmallHousehold
{
    public const string Json = """
        {
          "version": 3,
          "name": "Reed house",
          "start": "2026-03-05",
          "currency": "USD",
          "numbers": "1,234.56",
          "notes": [
            "100",
            "20",
            "5"
          ],
          "coins": [
            "0.25"
          ],
          "fillDay": "Friday",
          "holidays": {
            "set": "US",
            "extra": [
              "2026-11-27"
            ]
          },
          "setAsides": "level",
          "bank": {
            "kind": "machine",
            "notes": [
              "20"
            ],
            "limit": "500.00"
          },
          "cardRounding": "up",
          "surplusOrder": "balance",
          "slipLines": [
            "Thank you"
          ],
          "opening": {
            "account": "900.00",
            "notesOnHand": {
              "20": 3
            }
          },
          "sources": [
            {
              "id": "wage",
              "name": "Wage",
              "schedule": {
                "kind": "fortnightly",
                "anchor": "2026-03-06"
              },
              "shift": "before",
              "expected": "1712.35",
              "until": "2030-12-31"
            }
          ],
          "bills": [
            {
              "id": "rent",
              "name": "Rent",
              "amount": "840.00",
              "schedule": {
                "kind": "monthly",
                "day": 31
              },
              "shift": "before",
              "essential": true,
              "setAside": "300.00"
            }
          ],
          "debts": [
            {
              "id": "card",
              "name": "Card",
              "balance": "450.00",
              "rate": "0.1999",
              "minimum": {
                "percent": "0.02",
                "floor": "20.00"
              },
              "due": "last"
            }
          ],
          "pots": [
            {
              "id": "food",
              "name": "Food",
              "kind": "spending",
              "amount": "85.00",
              "per": "week",
              "held": "cash",
              "rank": 1,
              "floor": "60.00",
              "topNote": "20",
              "small": {
                "note": "5",
                "atLeast": "25.00"
              }
            },
            {
              "id": "roof",
              "name": "Roof",
              "kind": "sinking",
              "target": "1200.00",
              "by": "2027-05-01",
              "held": "account",
              "rank": 2,
              "floor": "0.00",
              "has": "150.00"
            }
          ]
        }

        """;

    /// <summary>The file with one stretch of it replaced; the stretch must be there exactly once.</summary>
    public static string With(string there, string instead)
    {
        int at = Json.IndexOf(there, StringComparison.Ordinal);
        Assert.True(at >= 0, $"'{there}' is not in the file.");
        Assert.True(Json.IndexOf(there, at + 1, StringComparison.Ordinal) < 0, $"'{there}' is in the file twice.");
        return Json.Replace(there, instead, StringComparison.Ordinal);
    }
}
