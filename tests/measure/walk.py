#!/usr/bin/env python3
"""Measures the program on a folder that exists: first paint, memory, and bytes and time of keys through its screens.

    python3 tests/measure/walk.py PROGRAM FOLDER [TIMES]

WALKS in the environment names some of them. FOLDER is copied, so that it stays as it is. Made for large ones: tests/Payday.Faults makes them (live, many). Each walk
begins at home and ends there with Esc; the first one is apart from the others, as it works out what they share. Then
`payday status` and the opening alone, the first paint, and how much memory all of it took.
"""
import os
import shutil
import statistics
import subprocess
import sys
import tempfile
import time

from terminal import READY, Terminal, first_paint

DOWN, UP, RIGHT, LEFT, ESC, ENTER = b"\x1b[B", b"\x1b[A", b"\x1b[C", b"\x1b[D", b"\x1b", b"\r"
PATIENCE = 3
WHICH = os.environ.get("WALKS", "")
WALKS = [
    ("home", [("a key", DOWN), ("a key", UP)]),
    ("a pot's history", [("opens", b"o"), ("of the first pot", ENTER), ("a key", DOWN), ("back", ESC), ("home", ESC)]),
    ("months and years", [("opens", b"y"), ("a key", DOWN), ("the year", ENTER), ("home", ESC)]),
    ("debts", [("opens", b"-"), ("a key", DOWN), ("home", ESC)]),
    ("bills", [("opens", b"q"), ("a key", DOWN), ("home", ESC)]),
    ("ledger", [("opens", b"l"), ("a key", DOWN), ("home", ESC)]),
    ("card purchases", [("opens", b"b"), ("a key", DOWN), ("home", ESC)]),
    ("moves", [("opens", b"t"), ("a key", DOWN), ("home", ESC)]),
    ("the week-end count", [("opens", b"w"), ("a key", DOWN), ("home", ESC)]),
    ("fills", [("opens", b"f"), ("a key", DOWN), ("home", ESC)]),
    ("calendar", [("opens", b"d"), ("a key", DOWN), ("home", ESC)]),
    ("outlook", [("opens", b"j"), ("a key", DOWN), ("home", ESC)]),
    ("bank", [("opens", b"@"), ("a key", DOWN), ("home", ESC)]),
    ("household", [("opens", b"h"), ("a key", DOWN), ("home", ESC)]),
    ("routine", [("opens", ENTER), ("a key", DOWN), ("bills", RIGHT), ("a key", DOWN), ("debts", RIGHT), ("a key", DOWN), ("pots", RIGHT), ("a key", DOWN),
                 ("surplus", RIGHT), ("a key", DOWN), ("withdrawal", RIGHT), ("a key", DOWN), ("slip", RIGHT), ("a key", DOWN), *[("a step back", LEFT)] * 6, ("home", ESC)]),
]


def walked(program, folder, times):
    """For each walk its keys: bytes, time, processor time, in each round."""
    terminal = Terminal([program, "--data", folder])
    terminal.read(30, until=READY)
    terminal.read(1.5)
    seen = {}
    for _ in range(times):
        for name, keys in (walk for walk in WALKS if WHICH in walk[0]):
            for number, (what, key) in enumerate(keys):
                before = terminal.worked()
                size, late = terminal.key(key, PATIENCE)
                seen.setdefault((name, number, what), []).append((size, late, terminal.worked() - before))
    memory = terminal.memory()
    terminal.end()
    return seen, memory


def command(program, folder, word):
    began = time.monotonic()
    subprocess.run([program, word, "--data", folder], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=False)
    return (time.monotonic() - began) * 1000


def main():
    if not 3 <= len(sys.argv) <= 4:
        sys.exit(__doc__)
    program, original = sys.argv[1:3]
    times = int(sys.argv[3]) if len(sys.argv) > 3 else 15
    with tempfile.TemporaryDirectory() as scratch:
        folder = os.path.join(scratch, "data")
        shutil.copytree(original, folder)
        os.chmod(folder, 0o700)
        command(program, folder, "status")
        status = [command(program, folder, "status") for _ in range(times)]
        paints = [first_paint([program, "--data", folder]) for _ in range(times)]
        terminal = Terminal([program, "--data", folder])
        terminal.read(30, until=READY)
        terminal.read(1)
        painted = terminal.memory()
        terminal.end()
        seen, memory = walked(program, folder, times)
    print(f"load {os.getloadavg()[0]:.1f}, {times} times")
    print(f"payday status         {statistics.median(status):7.1f} ms, {min(status):.1f} to {max(status):.1f}")
    print(f"first paint           {statistics.median(paints):7.1f} ms, {min(paints):.1f} to {max(paints):.1f}; {painted:.1f} MB then, {memory:.1f} MB after all of it")
    print("keys, by the clock and in brackets as processor time")
    for (name, _, what), costs in seen.items():
        later = costs[1:] or costs
        size, late, worked = (statistics.median(cost[at] for cost in later) for at in range(3))
        print(f"  {name:22}{what:18}{size:6.0f} B  first {costs[0][1]:7.1f} ms ({costs[0][2]:.1f}), then {late:7.1f} ms ({worked:.1f})")


if __name__ == "__main__":
    main()
