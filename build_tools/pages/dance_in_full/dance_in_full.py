"""The dance in full: part by part, who dances what, where they stand, and how it ends."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.model.bank import Bank
from build_tools.model.unit import Unit
from build_tools.page_words.words import _
from build_tools.pages.dance_in_full.part_views import (
    ChoiceView,
    OddGroups,
    SectionView,
    choice_views,
    groups_of_another_size,
    section_views,
    sound_in_words,
)
from build_tools.pages.frame.frame import Frame, Link, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.doors import PARTS, Door, doors, said, to_counts, to_unit
from build_tools.pages.pieces.labelled import Labelled
from build_tools.views.dance.dance_in_words import dance_told, whole_dance_in_words
from build_tools.views.words.punctuation import capital


@dataclass(frozen=True, slots=True)
class PartsView:
    """The page on the dance in full."""

    frame: Frame
    """What stands around the content."""
    language: str
    """The language the unit is written in, as a language tag."""
    unit: Link
    """The way back to the unit."""
    heading: str
    """What the page is called."""
    told: str
    """How long the dance is, and how it goes."""
    counted: str
    """Its form by letters, its counts and its tempo."""
    sections: tuple[SectionView, ...]
    """The sections, one by one."""
    ending: tuple[Labelled, ...]
    """What each pupil does at the very end."""
    odd_groups: tuple[OddGroups, ...]
    """What groups of another size do, where several sections have it."""
    front: str
    """Where the front is."""
    sound: str
    """The sound of the dance and who follows whom."""
    choices: tuple[ChoiceView, ...]
    """What pupils decide."""
    ways: tuple[Link, ...]
    """To watch it and to hear it."""
    doors: tuple[Door, ...]
    """The unit's other pages."""


def parts_page(bank: Bank, unit: Unit) -> Page:
    """The page units/<slug>/parts.html."""
    path, dance = f"units/{unit.slug}/{PARTS.href}", unit.dance
    here = said(PARTS)
    view = PartsView(
        frame=frame(bank, path, f"{here.words}: {unit.title}", here.about),
        language=unit.language,
        unit=to_unit(unit),
        heading=here.words,
        told=dance_told(dance),
        counted=whole_dance_in_words(dance),
        sections=section_views(unit),
        ending=tuple(Labelled(capital(part.who), part.does) for part in dance.ending),
        odd_groups=groups_of_another_size(unit),
        front=dance.front,
        sound=sound_in_words(dance.sound),
        choices=choice_views(unit),
        ways=(
            Link(_("Watch the dance from above"), "dance.html"),
            to_counts(unit.dance),
        ),
        doors=doors(unit, PARTS),
    )
    return Page(path, "dance_in_full/dance_in_full.html", view.frame.title, view)
