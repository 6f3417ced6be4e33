"""Faults in looking at dance and talking about it."""

from __future__ import annotations

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place, unknown_word

fault = Registry()


def _ask_only(unit: EditableUnit, file: str, question: str) -> Place:
    for step in unit.data[file]["steps"]:
        step.pop("ask", None)
    unit.data[file]["look_and_talk"]["questions"] = [{"question": question}]
    return file, ("look_and_talk", "questions", 0, "question")


@fault("closed-questions", "set")
def closed_questions(unit: EditableUnit) -> Place | None:
    return _ask_only(unit, unit.lesson_files[0], "Did you see the group stop?")


@fault("feed-forward-missing", "drop")
def feed_forward_missing(unit: EditableUnit) -> Place | None:
    for file in unit.lesson_files:
        _ask_only(unit, file, "What did you see move?")
    return unit.lesson_files[-1], ("look_and_talk", "questions")


@fault("judging-before-describing", "set")
def judging_before_describing(unit: EditableUnit) -> Place | None:
    return _ask_only(unit, unit.lesson_files[0], "What was good about it?")


@fault("next-step-missing", "drop")
def next_step_missing(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[0]
    unit.drop(file, ("look_and_talk", "next"))
    return file, ("look_and_talk",)


@fault("next-step-not-picked-up", "set")
def next_step_not_picked_up(unit: EditableUnit) -> Place | None:
    first, second = unit.lesson_files[:2]
    talk = unit.data[first]["look_and_talk"]
    talk["next"] = {"seen": "zigzag", "not_yet": "zigzag"}
    for step in unit.data[second]["steps"][:4]:
        step.update(phase="explore", does="Walk", task="Walk and stop.")
        for field in (
            "dances",
            "makes",
            "develops",
            "joins",
            "shows",
            "say",
            "ask",
            "look_for",
            "easier",
            "harder",
        ):
            step.pop(field, None)
    return first, ("look_and_talk", "next")


@fault("no-look-and-talk", "drop")
def no_look_and_talk(unit: EditableUnit) -> Place | None:
    file = unit.lesson_files[0]
    unit.drop(file, ("look_and_talk",))
    for n, step in enumerate(unit.data[file]["steps"]):
        if step["phase"] == "look and talk":
            return file, ("steps", n)
    return file, ("lesson",)


@fault("nothing-looks-back", "drop")
def nothing_looks_back(unit: EditableUnit) -> Place | None:
    if all(set(one["years"]).isdisjoint(range(3, 10)) for one in unit.top["years"]):
        return None
    for file in unit.lesson_files:
        _ask_only(unit, file, "What did you see move?")
    return unit.lesson_files[-1], ("look_and_talk", "questions", 0, "question")


@fault("question-word-never-taught", "set")
def question_word_never_taught(unit: EditableUnit) -> Place | None:
    word = unknown_word(unit)
    if word is None:
        return None
    return _ask_only(unit, unit.lesson_files[0], f"Where did you see the {word}?")


@fault("same-lookers-all-unit", "set")
def same_lookers_all_unit(unit: EditableUnit) -> Place | None:
    if len(unit.lesson_files) < 4 or all(one["years"] == ["R"] for one in unit.top["years"]):
        return None
    for file in unit.lesson_files:
        unit.set(file, ("look_and_talk", "who"), "partner")
    return unit.lesson_files[1], ("look_and_talk", "who")
