"""What is handed out, piece by piece, as the page to print shows it."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from build_tools.movement.class_groups import USUAL_CLASS
from build_tools.page_words.words import _
from build_tools.pages.pieces.picture import Picture


def by_hand(many: int, each: str) -> str | None:
    """How often to print what is wanted so `many` times, where no script makes the copies."""
    said = _(
        "Print this side {number} times for {pupils} pupils: {each}.",
        number=many,
        pupils=USUAL_CLASS,
        each=each,
    )
    return said if many > 1 else None


@dataclass(frozen=True, slots=True)
class GivenOut:
    """To whom a strip is given, and how often; the page's script makes as many as are wanted."""

    heading: str
    """What it is and who gets one: Crab, one for each pair."""
    grouping: str
    """The grouping of which each group has one."""
    count: str
    """How many there are."""
    more: str | None
    """The grouping of which each group may have one, where one to put up is enough."""
    by_hand: str | None
    """How often to print the side where no script makes the copies; None where it is once."""


@dataclass(frozen=True, slots=True)
class StripView:
    """A strip, as one lesson gives it out."""

    name: str
    """What stands on each strip."""
    how: str | None
    """How it is made from another; None for a motif as first made."""
    picture: Picture
    """The strip."""
    choices: tuple[str, ...]
    """What pupils choose, each with a line to write it on."""
    given: GivenOut
    """To whom, and how many."""


@dataclass(frozen=True, slots=True)
class PictureView:
    """A picture of the stimulus, on a side of its own."""

    title: str
    """What it is called."""
    href: str
    """The file."""
    text_version: str
    """What it shows, in words."""


@dataclass(frozen=True, slots=True)
class TextView:
    """A poem, a story or a rhythm, on a side of its own."""

    title: str
    """What it is called."""
    text: Markup
    """The whole of it."""


@dataclass(frozen=True, slots=True)
class CardView:
    """A card to cut out and put up or hold."""

    word: str
    """Printed large, for pupils to see from afar."""
    wide: bool
    """Whether it needs a side's whole width."""
    body: Markup | None
    """The body in the move that it names; None where it names none."""
    means: str | None = None
    """What it is, in a plain sentence, on a card that says so."""
    drawing: Markup | None = None
    """A motif that shows it."""


@dataclass(frozen=True, slots=True)
class CardSetView:
    """Cards of one kind."""

    anchor: str
    """Its place on the page."""
    heading: str
    """What they are: Letter cards."""
    size: str
    """word, large (one to a quarter of a side), sign (half a side), small (a set for a group) or
    device (a quarter of a side, with a plain sentence and a drawing)."""
    grouping: str | None
    """The grouping of which each group has a set; None where one set is for the class."""
    said: str | None
    """How many sets there are, in words."""
    in_a_row: str | None
    """The same where it goes on from the heading."""
    cards: tuple[CardView, ...]
    """The cards of one set."""
    by_hand: str | None
    """How often to print the side where no script makes the copies; None where it is once."""


@dataclass(frozen=True, slots=True)
class LookFor:
    """A column of the sheet to look with."""

    every_pupil: str
    """What every pupil shows."""
    looks_like: str
    """What you see when it is there."""
