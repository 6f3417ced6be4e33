"""Small things that several pages show: figures, lines with a label, days, licences."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from markupsafe import Markup

from build_tools.model.bank import Bank
from build_tools.views.diagrams.figure import Figure
from build_tools.views.words.licences import licence_address
from build_tools.views.words.plain_words import listed, name_in_words

_MONTHS = (
    "January", "February", "March", "April", "May", "June",
    "July", "August", "September", "October", "November", "December",
)  # fmt: skip
_OGL = "OGL-UK-3.0"


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
    kind, _, version = licence.rpartition("-")
    name = "Open Government Licence" if licence == _OGL else kind.replace("CC-", "CC ")
    address = licence_address(licence).removeprefix("https://").removeprefix("www.").rstrip("/")
    return f"{name} {version} ({address})"


def capital(words: str) -> str:
    """The same words with a capital at their start."""
    return words[:1].upper() + words[1:]


def quoted(words: str) -> str:
    """The same words between quote marks; what they quote themselves has single ones."""
    closed = re.sub(r'(?<=\S)["”]', "’", words.strip())
    inside = re.sub(r'["“]', "‘", closed)
    return f"“{inside}”"


def kept_together(words: str) -> str:
    """The same words with no line break between a number and what it counts."""
    return re.sub(r"(?<=\d) (?=(?:minute|lesson|count|second)s?\b)", "\N{NO-BREAK SPACE}", words)


def topics_in_words(bank: Bank, topics: Sequence[str]) -> str:
    """Topics as a list with a capital at its start: Textiles, industry and Victorians."""
    return capital(listed([_topic(bank, topic) for topic in topics]))


def _topic(bank: Bank, topic: str) -> str:
    """A topic in words, with a capital where its near words show that it is a proper name."""
    near = bank.topics[topic].also if topic in bank.topics else ()
    plain = name_in_words(topic)
    for words in near:
        if words.casefold().startswith(plain):
            return words[: len(plain)]
    written = [word for words in near for word in re.findall(r"\w+", words)]
    found = []
    for word in plain.split():
        same = [one for one in written if one.casefold().rstrip("s") == word.rstrip("s")]
        found.append(capital(word) if same and all(one[:1].isupper() for one in same) else word)
    return " ".join(found)


def sentence(words: str) -> str:
    """The same words as a sentence: a capital at the start, a stop at the end."""
    text = capital(words.strip())
    return text if text.endswith((".", "?", "!", "”", '"', "’")) else f"{text}."
