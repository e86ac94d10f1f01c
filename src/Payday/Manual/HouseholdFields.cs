using System.Collections.Immutable;

namespace Payday.Manual;

/// <summary>The fields of the household file, said once for the manual and for the README.</summary>
internal static class HouseholdFields
{
    /// <summary>All of them, in the order of the file; then the forms that several of them have.</summary>
    public static ImmutableArray<HouseholdField> All { get; } =
    [
        new("""`version`""", """`3`; files of versions `1` and `2` are read too"""),
        new("""`name`""", """what you call the household. Names have 1 to 60 characters, and differ within a list"""),
        new("""`start`""", """the date of the opening balances"""),
        new("""`currency`""", """ISO 4217 code, such as `"USD"`; every amount is in it"""),
        new("""`numbers`?""", """how the program writes numbers: `"1,234.56"` (default), `"1.234,56"`, `"1 234,56"`, `"1'234.56"` or `"1234.56"`. The file itself always has a point and no group marks"""),
        new("""`notes`?, `coins`?""", """values in use: `["100","50","20","10","5"]`; left out, the usual ones of the currency where they are known"""),
        new("""`fillDay`""", """`"Monday"` to `"Sunday"`"""),
        new("""`holidays`""", """`"US"`, `"GB-EW"`, `"TARGET"` or `"none"`; with dates of your own `{"set":"US","extra":["2026-11-27"]}`"""),
        new("""`setAsides`?""", """`"level"` (default) or `"asTheyFall"`"""),
        new("""`bank`?""", """`{"kind":"teller"}` (default) or `{"kind":"machine","notes":["20"],"limit":"500"}`, the limit optional: what it gives in one visit. The slip goes there as often as that needs, once a day from the payday on (our own rule)"""),
        new("""`cardRounding`?""", """`"up"` to the smallest note (default) or `"exact"`"""),
        new("""`surplusOrder`?""", """`"balance"`, the smallest first (default), or `"rate"`, the highest first"""),
        new("""`bufferKeeps`?""", """`"300.00"`: what the account's buffer keeps at least; above it the buffer helps a payday that falls short. Left out, the routine asks each time"""),
        new("""`overdraft`?""", """`"500.00"`: how far below zero the bank lets the account go, by its terms; no more cash than that is fetched. Left out, not at all"""),
        new("""`look`?""", """`"automatic"` (default), `"dark"`, `"light"`, `"highContrast"` or `"plain"`: the colours of the full screen; plain has none and only simple characters"""),
        new("""`slipLines`?""", """up to 6 lines for the top of the slip"""),
        new("""`opening`?""", """`{"account":"3318.37","notesOnHand":{"20":3,"5":2}}`; the account holds at least what bills and account pots have below, the rest is the buffer; `notesOnHand` may be left out. Below zero, `"-200.00"`, it is an overdraft, and no bill or account pot has anything below"""),
        new("""`sources`""", """at least one: `id`?, `name`, `schedule`, `shift`, `expected`, `later`?, `until`?"""),
        new("""`bills`?""", """`id`?, `name`, `amount`, `later`?, `schedule`, `shift`, `essential` (`true` or `false`), `setAside`? (set aside for it at the start), `until`?"""),
        new("""`debts`?""", """`id`?, `name`, `balance`, `rate` (`"0.1999"` is 19.99 % a year; 0 to 10), `minimum` (`{"fixed":"45.00"}` or `{"percent":"0.02","floor":"25.00"}`, with `"plusInterest":true` where the month's interest comes on top), `due` (a day) or `schedule`"""),
        new("""`pots`?""", """`id`?, `name`, `kind` and its fields (below), `held` (`"cash"` or `"account"`), `rank`? (1 is cut last; default: the position), `floor`? (the least a cut leaves of a fill), `has`? (in it at the start); for cash also `topNote`?, `small`? (`{"note":"5","atLeast":"25.00"}`) and `leftOver`?, what becomes of what a count finds left: `"stays"` (default), `"buffer"`, `{"pot":"boots"}` or `{"debt":"card"}`"""),
        new("""– `"spending"`""", """`amount`, `later`?, `per`: `"week"`, `"payday"`, `"month"` (an extra payday finds it full) or `"monthSpread"` (shared by all its paydays). What a short payday missed is made up for by those left of the month. In cash also `weeks`?: `"once"` (default: in the wallet on the first fill day) or `"split"` (a part on each); an amount a week always goes part by part"""),
        new("""– `"sinking"`""", """`target`, `later`?, `by` (a date), `repeats`? (a schedule: the dates after `by` on which it is needed again), `settledTo`? (what was spent up to that day doesn't count as bought), `finished`? (`true`: it gets nothing any more)"""),
        new("""– `"ladder"`""", """`unit`, `steps` (1 to 1000), `order`: `"rising"`, `"falling"` or `"even"`"""),
        new("""– `"reserve"`""", """`level`, `later`?, `perPayday`"""),
        new("""`later`""", """what the amount (`expected`, `target`, `level`) is from a date on: `[{"from":"2027-01-01","amount":"1480.00"}]`, up to 100, by rising date. A bill or wage goes by the date its schedule gives, before any move; a pot a week by each fill day; a pot a payday and a reserve by the payday; a target by the date on which it must be there. Of a month in which it changes each payday has its share of what holds on its own day, and a payday that lies outside its month that of the month's edge. An even plan of set-asides knows the dues to come with their amounts, so it carries a rise before it is there. A ladder has none: its steps are counted by what was put in"""),
        new("""`id`""", """what the ledger calls it whatever its name becomes: `a` to `z`, digits and single hyphens. Left out, it is made from the name; the program always writes it"""),
        new("""`shift`""", """where a date on a weekend or bank holiday moves: `"before"`, `"after"` or `"none"`"""),
        new("""a day""", """`1` to `31` (past the month's end: its last day), `"last"`, `"firstWorkingDay"`, `"lastWorkingDay"` or `{"nth":2,"weekday":"Friday"}`; `5` or `"last"` is the last one of each month"""),
        new("""`schedule`""", """`{"kind":"weekly","anchor":DATE}`, `"fortnightly"` or `"yearly"` likewise; `{"kind":"everyWeeks","weeks":4,"anchor":DATE}`; `{"kind":"everyMonths","months":3,"anchor":DATE}`; `{"kind":"monthly","day":…}`; `{"kind":"twiceMonthly","days":[15,"last"]}`; `{"kind":"dates","dates":[DATE,…]}`. An anchor is any date on which it falls"""),
    ];
}
