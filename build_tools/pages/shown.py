"""Small things that several pages show: figures, lines with a label, days, licences."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from build_tools.views.diagrams.figure import Figure

_MONTHS = (
    "January", "February", "March", "April", "May", "June",
    "July", "August", "September", "October", "November", "December",
)  # fmt: skip
_LICENCES = {
    "CC0-1.0": ("CC0 1.0", "creativecommons.org/publicdomain/zero/1.0"),
    "CC-BY-4.0": ("CC BY 4.0", "creativecommons.org/licenses/by/4.0"),
    "CC-BY-SA-4.0": ("CC BY-SA 4.0", "creativecommons.org/licenses/by-sa/4.0"),
    "CC-BY-NC-4.0": ("CC BY-NC 4.0", "creativecommons.org/licenses/by-nc/4.0"),
    "CC-BY-NC-SA-4.0": ("CC BY-NC-SA 4.0", "creativecommons.org/licenses/by-nc-sa/4.0"),
    "OGL-UK-3.0": (
        "Open Government Licence 3.0",
        "nationalarchives.gov.uk/doc/open-government-licence/version/3",
    ),
}


@dataclass(frozen=True, slots=True)
class Picture:
    """A diagram on a page, with the same in words."""

    title: str
    """What the diagram shows."""
    svg: Markup
    """The diagram."""
    words: tuple[str, ...]
    """Its text version, line by line."""


@dataclass(frozen=True, slots=True)
class Labelled:
    """A line with a label before it."""

    label: str
    """The label."""
    words: str
    """The line."""


def picture(figure: Figure) -> Picture:
    """A figure as a page shows it. Its SVG was made here and escaped where it was made."""
    return Picture(figure.title, Markup(figure.svg), figure.words)


def day_in_words(day: str) -> str:
    """2026-11-25 as 25 November 2026, the same on every computer."""
    year, month, number = day.split("-")
    return f"{int(number)} {_MONTHS[int(month) - 1]} {year}"


def licence_in_words(licence: str) -> str:
    """A licence's name with the address of its words."""
    name, address = _LICENCES[licence]
    return f"{name} ({address})"


def capital(words: str) -> str:
    """The same words with a capital at their start."""
    return words[:1].upper() + words[1:]


def sentence(words: str) -> str:
    """The same words as a sentence: a capital at the start, a stop at the end."""
    text = capital(words.strip())
    return text if text.endswith((".", "?", "!", "”", '"', "’")) else f"{text}."
