using System.Globalization;
using Payday.Faults;

// usage: damages COUNT [SEED [FROM]] | kills COUNT [SEED] | power [SEED] | live FOLDER YEARS | growth FOLDER...; without words a short run of each.
int Number(int at, int otherwise) => args.Length > at ? int.Parse(args[at], CultureInfo.InvariantCulture) : otherwise;

bool sound = args.FirstOrDefault() switch
{
    "work" => Worker.Run(args[1], Number(2, 0)),
    "damages" => Damages.Run(Number(1, 10_000), Number(2, 1), Number(3, 0)),
    "kills" => Kills.Run(Number(1, 1_000), Number(2, 1)),
    "power" => PowerCuts.Run(Number(1, 1)),
    "live" => Growth.Make(args[1], Number(2, 30)),
    "growth" => Growth.Measure(args[1..]),
    null => Damages.Run(500, 1) & Kills.Run(40, 1) & PowerCuts.Run(1),
    _ => throw new ArgumentException("Not called right: damages COUNT [SEED], kills COUNT [SEED], power [SEED], live FOLDER YEARS or growth FOLDER..."),
};
return sound ? 0 : 1;
