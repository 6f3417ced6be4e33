"""Lines that begin with a tab: as many columns as make sense of the file, else told as that alone.

How far a tab sets a line in, each editor shows in its own way. A file whose every level is a tab is
read as it is meant; where tabs stand among spaces, what editors usually make of one is tried. If
nothing fits, all that goes astray from the first tab on follows from it, and is not told too.
"""

from __future__ import annotations

import re
from collections.abc import Callable

from build_tools.problem import Fault
from build_tools.source.typed.lines import TAB
from build_tools.source.typed.what_was_read import Reading

_COLUMNS = (TAB, 4, 8)
_TAB = re.compile(r"^ *\t[ \t]*(?=\S)", re.MULTILINE)
_SPACES = re.compile(r" *(?:- +)?")
_NUMBERS = {2: "two", 4: "four", 6: "six", 8: "eight", 10: "ten", 12: "twelve"}


def read_by_its_tabs(text: str, first_line: int, read: Callable[[int], Reading]) -> Reading:
    """What `read` makes of `text`, with tabs of as many columns as leave the least to mend."""
    made = read(TAB)
    begins = _TAB.search(text)
    if not made.faults or begins is None:
        return made
    for columns in _COLUMNS[1:]:
        other = read(columns)
        if not other.faults:
            line = first_line + text.count("\n", 0, begins.start())
            other.guess(line, 1, f"a tab that a line begins with is read as {columns} spaces")
            return other
        made = min(made, other, key=lambda one: len(one.faults))
    fault = _told(text, first_line, begins)
    made.faults = [*(one for one in made.faults if one.line < fault.line), fault]
    return made


def _told(text: str, first_line: int, begins: re.Match[str]) -> Fault:
    line = first_line + text.count("\n", 0, begins.start())
    more = len(_TAB.findall(text, begins.end()))
    others = f", and {more} more {'line does' if more == 1 else 'lines do'}" if more else ""
    above = text[: begins.start()].rstrip("\n").rpartition("\n")[2]
    spaces = _SPACES.match(above)
    many = spaces.end() if spaces else 0
    number = _NUMBERS.get(many, str(many))
    write = f"write {number} spaces in place of the tab" if many else "write it without the tab"
    if many:
        write += ", as many as the line above has in front of its words"
    return Fault("broken-yaml", line, 1, f"line {line} begins with a tab{others}", write)
