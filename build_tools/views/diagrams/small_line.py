"""The whole dance on one short line: a block a section, its width by its length."""

from __future__ import annotations

from collections.abc import Collection

from build_tools.model.dance import Dance
from build_tools.page_words.words import _, ngettext
from build_tools.views.dance.dance_line import dance_line, width_in_counts
from build_tools.views.diagrams.blocks import block, letter_tag
from build_tools.views.diagrams.diagram import Figure
from build_tools.views.diagrams.hatch import hatches, letters_in_order
from build_tools.views.diagrams.score import score_in_words
from build_tools.views.diagrams.strip import StripSize
from build_tools.views.diagrams.svg import drawing, el, line
from build_tools.views.words.plain_words import listed

WIDTH = 360
_HEIGHT = 34


def small_line(dance: Dance, prefix: str, today: Collection[str] | None = None) -> Figure:
    """The dance on one line. Where `today` is given, only its letters are hatched."""
    whole = dance_line(dance)
    widths = [float(width_in_counts(part, dance.tempo)) for part in whole.parts]
    per = (WIDTH - 12) / (sum(widths) or 1)
    pieces, x = [hatches(prefix, dance.form, letters_in_order(dance.form))], 6.0
    for part, counts in zip(whole.parts, widths, strict=True):
        width, section = counts * per, part.section
        if section is None:
            pieces.append(line(x, 3 + _HEIGHT, x + width, 3 + _HEIGHT, 1.5))
        else:
            torn = section.counts is None
            if today is None or section.letter in today:
                pieces.append(block(prefix, section.letter, x, 3, width, _HEIGHT, torn))
            else:
                pieces.append(_later(x, width))
            pieces.append(letter_tag(section.letter, x + width / 2, 3 + _HEIGHT / 2, 17))
        x += width
    title = line_title(dance, today)
    svg = drawing(title, WIDTH, _HEIGHT + 8, *pieces, kind="small-line")
    return Figure(title, svg, score_in_words(whole))


def line_title(dance: Dance, today: Collection[str] | None = None) -> str:
    """What the line shows."""
    form = _form(dance)
    if today is None:
        return _("The dance is {form}", form=form)
    parts = [letter for letter in dict.fromkeys(dance.form) if letter in today]
    if len(parts) == len(set(dance.form)):
        return _("The dance is {form}; today all of it", form=form)
    return ngettext(
        "The dance is {form}; today part {parts}",
        "The dance is {form}; today parts {parts}",
        len(parts),
        form=form,
        parts=listed(parts),
    )


def _form(dance: Dance) -> str:
    """The letters in order, and what the sign of a changed return stands for."""
    changed = [
        _("{letter} is {part} changed", letter=letter, part=dance.sections[letter].returns)
        for letter in dict.fromkeys(dance.form)
        if dance.sections[letter].returns is not None
    ]
    form = " ".join(dance.form)
    return f"{form} ({', '.join(changed)})" if changed else form


def line_size() -> StripSize:
    """How large the line is drawn."""
    return StripSize(_HEIGHT + 8, 1)


def _later(x: float, width: float) -> str:
    return el(
        "rect",
        x=x,
        y=3,
        width=width,
        height=_HEIGHT,
        fill="none",
        stroke="currentColor",
        stroke_width=1,
        stroke_dasharray="3 3",
        class_="quiet",
    )
