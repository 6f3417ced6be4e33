"""A unit as a card: its own picture, what the class will make, and straight to a lesson."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

from build_tools.model.bank import Bank
from build_tools.model.school_years import in_words
from build_tools.model.unit import Unit
from build_tools.model.work import Work
from build_tools.page_words.speaking import speaking
from build_tools.page_words.words import _, of_schema
from build_tools.pages.frame.frame import Link
from build_tools.pages.pieces.lesson_entries import lesson_href
from build_tools.pages.pieces.picture import Picture, picture
from build_tools.views.diagrams.named_strip import named_strip
from build_tools.views.words.plain_words import listed
from build_tools.views.words.topics import topics_in_words
from build_tools.views.words.unit_in_words import lessons_in_words

_SAME_AGES = ("England", "Wales", "Scotland")
"""Nations whose school years no other nation's are taken for: Scotland's are called P4."""
_SENTENCE = re.compile(r"(?<=[.!?])\s+(?=[A-Z])")


@dataclass(frozen=True, slots=True)
class UnitCard:
    """One unit as a card, its words in the unit's language."""

    language: str
    """The language the unit is written in, as a language tag."""
    title: str
    """The words of the link to it."""
    href: str
    """Where its page is, relative to the page that shows the card."""
    years: str
    """Its school years, and how many lessons of how many minutes."""
    summary: str
    """What the class will make, in a sentence."""
    topics: str
    """Its topics and the subjects it links with, in words."""
    issued: str
    """Who issued it, where that is somebody else than who keeps the bank; else empty."""
    src: str | None
    """The small copy of its first picture; None where it has no picture."""
    shows: str
    """What the picture shows."""
    strip: Picture
    """The dance part by part, with names."""
    lesson: str
    """What stands before the numbers of its lessons."""
    in_lesson: str
    """The same where it is only heard, with the unit's title."""
    lessons: tuple[Link, ...]
    """Straight to each lesson; the words are its number."""


def unit_card(bank: Bank, unit: Unit) -> UnitCard:
    """The card of `unit` for a page in the site's top folder."""
    with speaking(unit.language):
        return _unit_card(bank, unit)


def _unit_card(bank: Bank, unit: Unit) -> UnitCard:
    at = f"units/{unit.slug}/"
    shown = first_picture(unit)
    ours = unit.publisher == bank.name
    return UnitCard(
        language=unit.language,
        title=unit.title,
        href=f"{at}index.html",
        years=f"{_years(unit)} · {lessons_in_words(unit)}",
        summary=unit.summary,
        topics=f"{topics_in_words(bank, unit.topics)} · {listed(unit.subjects)}",
        issued="" if ours else _("From {publisher}", publisher=unit.publisher),
        src=f"{at}{small_name(shown)}" if shown else None,
        shows=picture_shows(shown) if shown else "",
        strip=picture(named_strip(unit.dance)),
        lesson=_("Lesson"),
        in_lesson=_("{unit}, lesson", unit=unit.title),
        lessons=tuple(
            Link(str(lesson.number), at + lesson_href(lesson.number)) for lesson in unit.lessons
        ),
    )


def moved(card: UnitCard, to_root: str) -> UnitCard:
    """The same for a page that is `to_root` away from the site's top folder."""
    return replace(
        card,
        href=to_root + card.href,
        src=to_root + card.src if card.src else None,
        lessons=tuple(Link(one.words, to_root + one.href) for one in card.lessons),
    )


def _years(unit: Unit) -> str:
    """The school years, with the nation only where the same words mean another age."""
    said = "; ".join(in_words(one) for one in unit.years)
    for nation in _SAME_AGES:
        said = said.replace(f" ({of_schema(nation)})", "")
    return said


def first_picture(unit: Unit) -> Work | None:
    """The first thing of the stimulus that is a picture."""
    return next((item for item in unit.stimulus.items if is_picture(item)), None)


def is_picture(item: Work) -> bool:
    """Whether the thing is a picture: it has a file, and that is no recording."""
    return bool(item.file) and not is_recording(item)


def is_recording(item: Work) -> bool:
    """Whether the thing is a recording."""
    return bool(item.file and item.file.endswith(".mp3"))


def small_name(item: Work) -> str:
    """The file of a small copy of a picture, in its unit's folder."""
    return "card.svg" if (item.file or "").endswith(".svg") else "card.jpg"


def picture_shows(item: Work) -> str:
    """What a picture shows, in its first sentence or two."""
    sentences = _SENTENCE.split(" ".join((item.text_version or item.title).split()))
    short = len(sentences) > 1 and len(sentences[0]) < 60
    return " ".join(sentences[:2]) if short else sentences[0]
