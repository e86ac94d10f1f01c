#!/usr/bin/env python3
"""Draws the screens of a folder one after the other as one moving SVG: film.py COLUMNS ROWS FOLDER >film.svg

A file of the folder is a screen as `tmux capture-pane -e -p` gives it, followed by a line with the milliseconds that it
stays and one with the key that led there; they are taken by name. Rows that stay the same are drawn once. Where no motion
is wanted the first screen stands still.
"""
import itertools
import pathlib
import sys

import picture

CAPTION = picture.PLAIN | {"bold": True, "reverse": True}


def main():
    columns, lines = int(sys.argv[1]), int(sys.argv[2])
    screens, stays = [], []
    for path in sorted(pathlib.Path(sys.argv[3]).iterdir()):
        *screen, stay, key, _ = path.read_text().split("\n")
        caption = "".join(picture.drawn(f" {key} ", CAPTION, columns - len(key) - 3, lines, picture.DARK)) if key else ""
        elements = ["".join(row) for row in picture.rows("\n".join(screen[:lines]))]
        screens.append((elements + [""] * lines)[:lines] + [caption])
        stays.append(int(stay))
    ends = [0, *itertools.accumulate(stays)]
    spans, drawn = {}, []
    for row in range(lines + 1):
        at = 0
        for content, group in itertools.groupby(screen[row] for screen in screens):
            until = at + len(list(group))
            if content:
                name = spans.setdefault((at, until), f"s{len(spans)}")
                drawn.append(f'<g class="{name}">{content}</g>')
            at = until
    print(*picture.beginning(columns, lines + 1), sep="\n")
    print("<style>")
    for (at, until), name in spans.items():
        if (at, until) != (0, len(screens)):
            begins, over = 100 * ends[at] / ends[-1], 100 * ends[until] / ends[-1]
            shows = f"0%,{over:.3f}%,100%{{visibility:hidden}}{begins:.3f}%{{visibility:visible}}" if at else f"0%{{visibility:visible}}{over:.3f}%,100%{{visibility:hidden}}"
            print(f".{name}{{visibility:{'hidden' if at else 'visible'};animation:{name} {ends[-1]}ms steps(1,end) infinite}}@keyframes {name}{{{shows}}}")
    print("@media (prefers-reduced-motion:reduce){g{animation:none !important}}")
    print("</style>", *drawn, "</svg>", sep="\n")


main()
