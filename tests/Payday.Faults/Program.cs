using System.Globalization;
using NodaTime.Text;
using Payday.Faults;
using Payday.Faults.Households;
using Payday.Faults.Monkeys;
using Payday.Faults.Programs;

// usage: damages COUNT [SEED [FROM]] | kills COUNT [SEED] | program COUNT [SEED] | power [SEED] | disks [EACH [SEED]] | clocks LIVES [SEED] |
// two ROUNDS | strange ROUNDS [SEED] | monkey SEED KEYS | households SEED COUNT | live FOLDER YEARS [LAST] | many FOLDER ITEMS | growth FOLDER...; without words a short run of each but the last three.
int Number(int at, int otherwise) => args.Length > at ? int.Parse(args[at], CultureInfo.InvariantCulture) : otherwise;

bool sound = args.FirstOrDefault() switch
{
    "work" => Worker.Run(args[1], Number(2, 0)),
    "damages" => Damages.Run(Number(1, 10_000), Number(2, 1), Number(3, 0)),
    "kills" => Kills.Run(Number(1, 1_000), Number(2, 1)),
    "program" => ProgramKills.Run(Number(1, 1_000), Number(2, 1)),
    "power" => PowerCuts.Run(Number(1, 1)),
    "disks" => Disks.Run(Number(1, 1), Number(2, 0)),
    "once" => OneChange.Run(args[1]),
    "clocks" => Clocks.Run(Number(1, 200), Number(2, 1)),
    "two" => Neighbours.Run(Number(1, 20)),
    "strange" => Strangers.Run(Number(1, 1_000), Number(2, 1)),
    "monkey" => MonkeyRun.Run(Number(1, 1), Number(2, 10_000)),
    "hold" => Neighbours.Hold(args[1]),
    "turns" => Neighbours.TakeTurns(args[1]),
    "households" => HouseholdRuns.Run(Number(1, 1), Number(2, 100)),
    "live" => Growth.Make(args[1], Number(2, 30), args.Length > 3 ? LocalDatePattern.Iso.Parse(args[3]).Value : null),
    "many" => ManyItems.Make(args[1], Number(2, 500)),
    "open" => Growth.Open(args[1]),
    "growth" => Growth.Measure(args[1..]),
    null => Damages.Run(500, 1) & Kills.Run(40, 1) & ProgramKills.Run(8, 1) & PowerCuts.Run(1) & Disks.Run(25, 1) & Clocks.Run(10, 1) & Neighbours.Run(3) & Strangers.Run(60, 1) & MonkeyRun.Run(1, 1_500),
    _ => throw new ArgumentException("Not called right: damages COUNT [SEED], kills COUNT [SEED], program COUNT [SEED], power [SEED], disks [EACH [SEED]], clocks LIVES [SEED], two ROUNDS, strange ROUNDS [SEED], monkey SEED KEYS, households SEED COUNT, live FOLDER YEARS [LAST], many FOLDER ITEMS or growth FOLDER..."),
};
return sound ? 0 : 1;
