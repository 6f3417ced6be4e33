"""Faults of a whole unit: something is nowhere in it, so that it has to go everywhere."""

from __future__ import annotations

import re
from typing import Any

from tests.planted.faults import Registry
from tests.planted.unit_edits import EditableUnit, Place
from tests.planted.whole_edits import (
    DEEDS,
    become,
    no_improvising,
    only_mirrors,
    plain_steps,
    without_sentences,
    written_actions,
)

fault = Registry()

_OVER = re.compile(
    r"\b(over|threes?|odd|spare|extra|left over|alone|nearest|uneven|without|no partner|"
    r"joins?|shares?)\b",
    re.IGNORECASE,
)
_TURNS = re.compile(
    r"\b(swap\w*|turns?|change\w*|new|next|another|other|each|everyone|revers\w+|rotat\w+|pass\w*|"
    r"then)\b",
    re.IGNORECASE,
)
_OF_SPACE = ("level", "direction", "pathway", "size", "facing")


@fault("development-shares-nothing", "insert")
def one_move_kept_and_replaced(unit: EditableUnit) -> Place | None:
    motif = next(iter(unit.top.get("motifs", {})), None)
    if motif is None:
        return None
    developments = unit.top.setdefault("developments", {})
    developments["one-move"] = {"of": motif, "device": "fragmentation", "keep": [1, 1]}
    by = {"turn": 2, "as": "corkscrew", "level": "high to low"}
    all_new = {
        "of": "one-move",
        "device": "replacing an action",
        "replace": {"action": 1, "by": by},
    }
    return unit.set(unit.file, ("developments", "all-new"), all_new)


@fault("development-shares-nothing", "swap")
def every_move_replaced_in_turn(unit: EditableUnit) -> Place | None:
    motif = next(iter(unit.top.get("motifs", {})), None)
    if motif is None:
        return None
    developments, source = unit.top.setdefault("developments", {}), motif
    for n, action in enumerate(unit.top["motifs"][motif]["actions"], start=1):
        kind = "jump" if "jump" not in action else "turn"
        replace = {"action": n, "by": {kind: 2, "as": f"corkscrew {n}"}}
        name = f"new-from-{n}"
        developments[name] = {"of": source, "device": "replacing an action", "replace": replace}
        source = name
    return unit.file, ("developments", source)


@fault("heading-empty", "set")
def one_kind_of_action(unit: EditableUnit) -> Place | None:
    if not unit.top.get("motifs"):
        return None
    no_improvising(unit)
    for action in written_actions(unit):
        become(action, "gesture")
    return unit.file, ("motifs",)


@fault("heading-empty", "drop")
def nothing_of_space(unit: EditableUnit) -> Place | None:
    if not unit.top.get("motifs"):
        return None
    plain_steps(unit)
    no_improvising(unit)
    only_mirrors(unit, tuple(f"change of {field}" for field in _OF_SPACE))
    for n, action in enumerate(written_actions(unit)):
        become(action, ("gesture", "transfer", "turn")[n % 3])
        for field in _OF_SPACE:
            action.pop(field, None)
    return unit.file, ("motifs",)


@fault("heading-empty", "drop")
def nothing_of_dynamics(unit: EditableUnit) -> Place | None:
    if not unit.top.get("motifs"):
        return None
    plain_steps(unit)
    no_improvising(unit)
    only_mirrors(unit, ("change of dynamics", "change of speed", "change of rhythm"))
    for action in written_actions(unit):
        action.pop("dynamics", None)
    return unit.file, ("motifs",)


@fault("heading-empty", "set")
def nobody_with_anybody(unit: EditableUnit) -> Place | None:
    youngest = not {"R", 1, "P1"}.isdisjoint(unit.top["years"][0]["years"])
    if not unit.top.get("motifs") or youngest:
        return None
    plain_steps(unit)
    no_improvising(unit)
    only_mirrors(unit, ("change of number of dancers", "change of relationship"))
    for section in unit.top["sections"].values():
        for side in ("start", "end"):
            section[side]["formation"] = "scattered"
        for passage in section.get("danced", []):
            what = passage["what"][:1]
            passage.clear()
            passage.update({"what": what, "as": "unison", "who": "everyone"})
    for _, _, step in unit.steps():
        step["grouping"] = "alone"
    return unit.file, ("motifs",)


@fault("no-choice-by-pupils", "drop")
def made_up_and_chosen_no_more(unit: EditableUnit) -> Place | None:
    if not any("improvised" in section for section in unit.top["sections"].values()):
        return None
    if not unit.top.get("motifs") or "order_choice" in unit.top["dance"]:
        return None
    plain_steps(unit)
    no_improvising(unit)
    unit.top.pop("choices", None)
    for development in list(unit.top.get("developments", {}).values()):
        if "choice" in development:
            only_mirrors(unit, (development["device"],))
    for motif in unit.top["motifs"].values():
        motif["from"] = "teacher"
    for _, _, step in unit.steps():
        step.pop("settles", None)
    return unit.file, ("motifs",)


def _first_with_partner(unit: EditableUnit) -> tuple[str, int, Any] | None:
    return unit.first_step(lambda s: s["grouping"] in ("pairs", "threes") and s["phase"] in DEEDS)


def _nothing_said_of_one_over(unit: EditableUnit) -> None:
    """Take out every line that may say what one pupil over does."""
    without_sentences(unit, _OVER)
    for lesson_file, lesson in unit.lessons():
        unit.bodies[lesson_file] = "Notes.\n"
        lesson.get("change", {}).pop("partners", None)
        lesson["if"] = dict.fromkeys(lesson["if"], "Stop, breathe and begin again.")
        for other in lesson["steps"]:
            for field in ("into", "easier"):
                other.pop(field, None)
    unit.bodies[unit.file] = "Notes.\n"


@fault("odd-one-out-unsaid", "drop")
def one_over_said_no_more(unit: EditableUnit) -> Place | None:
    found = _first_with_partner(unit)
    if found is None:
        return None
    _nothing_said_of_one_over(unit)
    file, n, _ = found
    step = unit.data[file]["steps"][n]
    step["task"] = "Mirror your partner. Swap."
    return file, ("steps", n, "grouping")


@fault("odd-one-out-unsaid", "set")
def pairs_with_nothing_said(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda s: s["phase"] in DEEDS)
    if found is None:
        return None
    _nothing_said_of_one_over(unit)
    file, n, _ = found
    unit.data[file]["steps"][n].update(grouping="pairs", task="Mirror your partner. Swap.")
    return file, ("steps", n, "grouping")


@fault("return-never-settled", "stretch")
def another_return_without_a_word(unit: EditableUnit) -> Place | None:
    form = unit.top["dance"]["form"].split()
    if "order_choice" in unit.top["dance"] or len(set(form)) < len(form):
        return None
    motifs = unit.top.get("motifs", {})
    danced = unit.top["sections"][form[0]].get("danced", [])
    if not any(motifs.get(w, {}).get("from") == "pupils" for p in danced for w in p["what"]):
        return None
    plain_steps(unit)
    unit.bodies[unit.file] = "Notes.\n"
    unit.top["dance"]["form"] = " ".join((*form, form[0]))
    unit.top["summary"] = "A dance in parts."
    unit.top["ending"] = [{"who": "everyone", "does": "Sink and be still"}]
    for passage in danced:
        passage["who"] = "everyone"
    for transition in unit.top.get("transitions", []):
        transition.update(how="Walk to your place", cue="One drum beat")
    for choice in unit.top.get("choices", {}).values():
        choice["what"] = "The shape of the arms"
    return unit.set(unit.file, ("sections", form[0], "idea"), "The start of the story")


@fault("role-some-never-get", "set")
def a_captain_for_good(unit: EditableUnit) -> Place | None:
    found = unit.first_step(lambda s: s["phase"] in ("make", "develop", "join", "rehearse"))
    if found is None:
        return None
    file, n, _ = found
    unit.bodies[file] = "Notes.\n"
    plain_steps(unit)
    return unit.set(file, ("steps", n, "task"), "The captain makes a shape. The rest copy it.")


@fault("role-some-never-get", "set")
def sides_that_never_swap(unit: EditableUnit) -> Place | None:
    names = [*unit.top.get("motifs", {}), *unit.top.get("developments", {})]
    letter = next((x for x, s in unit.top["sections"].items() if s.get("danced")), None)
    if len(names) < 2 or letter is None:
        return None
    without_sentences(unit, _TURNS)
    passage = unit.top["sections"][letter]["danced"][0]
    passage.clear()
    sides = {"parts": 2, "who": "ones on the left and twos on the right"}
    # a pair that no other passage has, or the two would be danced the other way round there
    passage.update({"what": [names[0], names[-1]], "as": "side by side", **sides})
    return unit.file, ("sections", letter, "danced", 0)


@fault("role-some-never-get", "drop")
def nothing_for_who_was_away(unit: EditableUnit) -> Place | None:
    names = [*unit.top.get("motifs", {}), *unit.top.get("developments", {})]
    letter = next((x for x, s in unit.top["sections"].items() if s.get("danced")), None)
    if len(names) < 2 or letter is None:
        return None
    passage = unit.top["sections"][letter]["danced"][0]
    passage.clear()
    sides = {"parts": 2, "who": "ones and twos, and the next time the other way round"}
    passage.update({"what": names[:2], "as": "side by side", **sides})
    file = unit.lesson_files[1]
    for field in ("story_so_far", "never_did_last"):
        unit.data[file].pop(field, None)
    return file, ("lesson",)
