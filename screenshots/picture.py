#!/usr/bin/env python3
"""Draws a terminal's screen, as `tmux capture-pane -e -p` gives it, as SVG: picture.py COLUMNS ROWS [light] <screen >picture.svg"""
import re
import sys
import unicodedata
from xml.sax.saxutils import escape

CELL, LINE, MARGIN, SIZE = 8.4, 17, 12, 14
DARK, LIGHT = ("#d8d8d8", "#1c1c1c"), ("#202020", "#ffffff")
COLOURS = ["#000000", "#c04040", "#50a050", "#c0a030", "#5080c0", "#a060a0", "#40a0a0", "#d0d0d0"]
BRIGHT = ["#707070", "#ff6060", "#70d070", "#f0d050", "#80b0f0", "#d090d0", "#60d0d0", "#ffffff"]
PLAIN = {"ink": None, "paper": None, "bold": False, "reverse": False}


def turned(style, codes):
    """The style after a sequence of SGR codes (ECMA-48, 8.3.117): those that the program and tmux use."""
    style = dict(style)
    for code in codes or [0]:
        if code == 0:
            style = dict(PLAIN)
        elif code in (1, 22):
            style["bold"] = code == 1
        elif code in (7, 27):
            style["reverse"] = code == 7
        elif code in (39, 49):
            style["ink" if code == 39 else "paper"] = None
        elif code // 10 in (3, 4) and code % 10 < 8:
            style["ink" if code < 40 else "paper"] = COLOURS[code % 10]
        elif code // 10 in (9, 10) and code % 10 < 8:
            style["ink" if code < 100 else "paper"] = BRIGHT[code % 10]
    return style


def cells(text):
    """Columns a text takes."""
    return sum(0 if unicodedata.combining(c) else 2 if unicodedata.east_asian_width(c) in "WF" else 1 for c in text)


def drawn(text, style, column, row, look):
    """The elements of a text of one style."""
    ink, paper = style["ink"] or look[0], style["paper"]
    if style["reverse"]:
        ink, paper = paper or look[1], ink
    x, width = MARGIN + column * CELL, cells(text) * CELL
    if paper:
        yield f'<rect x="{x:.1f}" y="{MARGIN + row * LINE}" width="{width:.1f}" height="{LINE}" fill="{paper}"/>'
    if text.strip():
        weight = ' font-weight="bold"' if style["bold"] else ""
        yield (f'<text x="{x:.1f}" y="{MARGIN + row * LINE + 13}" fill="{ink}"{weight} textLength="{width:.1f}" '
               f'lengthAdjust="spacingAndGlyphs">{escape(text)}</text>')


def rows(screen, look=DARK):
    """The elements of each row; a style goes on from one row to the next."""
    style = PLAIN
    for row, line in enumerate(screen.split("\n")):
        column, elements = 0, []
        for part in re.split(r"(\x1b\[[0-9;]*m)", line):
            if part.startswith("\x1b["):
                style = turned(style, [int(code or 0) for code in part[2:-1].split(";")])
            elif part:
                elements += drawn(part, style, column, row, look)
                column += cells(part)
        yield elements


def beginning(columns, lines, look=DARK):
    """What a picture begins with, its paper drawn."""
    width, height = columns * CELL + 2 * MARGIN, lines * LINE + 2 * MARGIN
    yield (f'<svg xmlns="http://www.w3.org/2000/svg" width="{width:.0f}" height="{height}" viewBox="0 0 {width:.0f} {height}" '
           f'font-family="DejaVu Sans Mono, Menlo, Consolas, monospace" font-size="{SIZE}" xml:space="preserve">')
    yield f'<rect width="100%" height="100%" rx="6" fill="{look[1]}"/>'


def main():
    columns, lines = int(sys.argv[1]), int(sys.argv[2])
    look = LIGHT if "light" in sys.argv[3:] else DARK
    print(*beginning(columns, lines, look), sep="\n")
    for elements in list(rows(sys.stdin.read(), look))[:lines]:
        for element in elements:
            print(element)
    print("</svg>")


if __name__ == "__main__":
    main()
