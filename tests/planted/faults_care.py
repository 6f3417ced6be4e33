"""Faults in how pupils are spoken to, grouped, looked at and told what words mean."""

from __future__ import annotations

from build_tools.problem import FieldPath
from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place

fault = Registry()


def _set(unit: EditableUnit, path: FieldPath, text: str) -> Place:
    """Write a line into the second lesson."""
    return unit.set(unit.lesson_files[1], path, text)


@fault("made-to-join", "set")
def the_row_loses_its_turn(unit: EditableUnit) -> Place | None:
    text = "Tell them the row will lose its turn until they dance."
    return _set(unit, ("if", "will_not_join"), text)


@fault("sent-to-watch", "set")
def who_cannot_watches(unit: EditableUnit) -> Place | None:
    return _set(unit, ("steps", 1, "easier"), "Anyone who cannot spin watches that part.")


@fault("asks-about-home", "set")
def who_has_been_in_a_flood(unit: EditableUnit) -> Place | None:
    return _set(unit, ("steps", 1, "say"), "Tell us who has been in a flood.")


@fault("teams-picked", "set")
def best_friends(unit: EditableUnit) -> Place | None:
    return _set(unit, ("steps", 1, "say"), "Choose your best friend.")


@fault("dancers-ranked", "set")
def the_best_dancers(unit: EditableUnit) -> Place | None:
    path = ("look_and_talk", "questions", 0, "question")
    return _set(unit, path, "Who are the best dancers in the pair you saw?")


@fault("look-for-unseen", "set")
def everyone_enjoying_it(unit: EditableUnit) -> Place | None:
    path = ("look_and_talk", "looking_for")
    return _set(unit, path, "everyone enjoying it and doing their best")


@fault("cards-not-collected", "set")
def arrow_cards_from_nowhere(unit: EditableUnit) -> Place | None:
    return _set(unit, ("not_dancing",), "Holds up the arrow cards, one at each change of way.")


@fault("writing-in-the-hall", "set")
def half_a_page(unit: EditableUnit) -> Place | None:
    return _set(unit, ("steps", 1, "say"), "Write half a page on what you saw.")


@fault("word-explained-as-another", "set")
def canon_at_the_same_time(unit: EditableUnit) -> Place | None:
    unit.top["words"] = {"canon": "the same moves, everyone at the same time"}
    return unit.file, ("words", "canon")
