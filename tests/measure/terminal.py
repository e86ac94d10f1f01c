#!/usr/bin/env python3
"""Measures the program at a terminal of 80x24: first paint, memory, bytes and time of a key, and idling.

    python3 tests/measure/terminal.py PROGRAM [ARGUMENT...] [-- OTHER [ARGUMENT...]]

OTHER is measured beside it, start by start, so that both meet the same machine; its keys are not. tests/measure/BareWindow
is the library alone: dotnet publish tests/measure/BareWindow -c Release -r linux-x64 -o BARE
Needs nothing but Python on Linux. The terminal here answers no question the program asks it, as a plain one would not.
"""
import fcntl
import itertools
import os
import pty
import select
import signal
import statistics
import struct
import sys
import termios
import time

STARTS = 15
IDLE_SECONDS = 10
READY = b"? help"
KEYS = [
    ("Enter (to the routine)", b"\r"), ("Right (to bills)", b"\x1b[C"), ("Down", b"\x1b[B"), ("Down", b"\x1b[B"), ("Up", b"\x1b[A"),
    ("Right (to debts)", b"\x1b[C"), ("Down", b"\x1b[B"), ("Right (to pots)", b"\x1b[C"), ("Down", b"\x1b[B"), ("Down", b"\x1b[B"),
    ("Enter (edit)", b"\r"), ("1 (digit)", b"1"), ("2 (digit)", b"2"), ("Enter (takes 12)", b"\r"), ("Space (proposal)", b" "),
    ("Right (to surplus)", b"\x1b[C"), ("Down", b"\x1b[B"), ("Right (to withdrawal)", b"\x1b[C"), ("Down", b"\x1b[B"), ("Tab", b"\t"), ("Up", b"\x1b[A"),
]


class Terminal:
    """The program on a pseudo-terminal."""

    def __init__(self, command):
        size = struct.pack("HHHH", 24, 80, 0, 0)
        self.started = time.monotonic()
        self.pid, self.fd = pty.fork()
        if self.pid == 0:
            fcntl.ioctl(0, termios.TIOCSWINSZ, size)
            os.environ.update(TERM="xterm-256color", LANG="C.UTF-8")
            os.execvp(command[0], command)

    def read(self, seconds, until=None, quiet=None):
        """What comes: until some bytes are in it, or until nothing came for `quiet` seconds, or for `seconds`."""
        out, end, last = b"", time.monotonic() + seconds, None
        while time.monotonic() < end:
            if select.select([self.fd], [], [], 0.001)[0]:
                out += os.read(self.fd, 65536)
                last = time.monotonic()
                if until and until in out:
                    break
            elif quiet and last and time.monotonic() - last > quiet:
                break
        return out, last

    def key(self, key, patience=0.6):
        """Bytes and milliseconds until the last of them for a key; zero of both where nothing comes for so many seconds."""
        sent = time.monotonic()
        os.write(self.fd, key)
        out, last = self.read(patience, quiet=0.15)
        return len(out), (last - sent) * 1000 if last else 0.0

    def memory(self):
        with open(f"/proc/{self.pid}/status") as status:
            return next(int(line.split()[1]) for line in status if line.startswith("VmHWM")) / 1024

    def ticks(self):
        with open(f"/proc/{self.pid}/stat") as stat:
            fields = stat.read().rsplit(")", 1)[1].split()
        return int(fields[11]) + int(fields[12])

    def worked(self):
        """Milliseconds of processor time so far, of all its threads that are there."""
        tasks = os.listdir(f"/proc/{self.pid}/task")
        return sum(int(open(f"/proc/{self.pid}/task/{task}/schedstat").read().split()[0]) for task in tasks) / 1e6

    def end(self):
        os.kill(self.pid, signal.SIGTERM)
        os.waitpid(self.pid, 0)
        os.close(self.fd)


def first_paint(command):
    """Milliseconds from the start to the last bytes of the first screen."""
    terminal = Terminal(command)
    out, last = terminal.read(20, until=READY)
    if READY not in out:
        sys.exit(f"the first screen of {command[0]} never came")
    late = (last - terminal.started) * 1000
    terminal.end()
    return late


def idle(command, keys):
    """Memory in MB, bytes a second and part of a core while nobody types, and what each key took before."""
    terminal = Terminal(command)
    terminal.read(20, until=READY)
    terminal.read(2.5)
    costs = [(name, *terminal.key(key)) for name, key in keys]
    before = terminal.ticks()
    out, _ = terminal.read(IDLE_SECONDS)
    busy = (terminal.ticks() - before) / os.sysconf("SC_CLK_TCK") / IDLE_SECONDS
    memory = terminal.memory()
    terminal.end()
    return memory, len(out) / IDLE_SECONDS, busy, costs


def main():
    commands = [list(words) for dashes, words in itertools.groupby(sys.argv[1:], lambda word: word == "--") if not dashes]
    if not 1 <= len(commands) <= 2:
        sys.exit(__doc__)
    paints = [[first_paint(command) for command in commands] for _ in range(STARTS)]
    costs = []
    for number, command in enumerate(commands):
        times = [row[number] for row in paints]
        memory, sent, busy, keys = idle(command, KEYS if number == 0 else [])
        costs += keys
        print(" ".join(command))
        print(f"  first paint         {statistics.median(times):7.1f} ms median of {STARTS}, {min(times):.1f} to {max(times):.1f}")
        print(f"  memory at most      {memory:7.1f} MB")
        print(f"  idle                {sent:7.1f} B/s, {busy * 100:.1f} % of a core over {IDLE_SECONDS} s")
    print(f"a key shows after     {statistics.median(late for _, _, late in costs):7.1f} ms median of {len(costs)}, at most {max(late for _, _, late in costs):.1f}")
    for name, size, late in costs:
        print(f"  {name:24}{size:6} B {late:7.1f} ms")


if __name__ == "__main__":
    main()
