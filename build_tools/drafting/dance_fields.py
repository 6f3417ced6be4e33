"""The dance of a draft as the fields of its unit file."""

from __future__ import annotations

from itertools import pairwise

from build_tools.drafting.asked import Asked
from build_tools.drafting.plan import (
    JOIN_COUNTS,
    TEMPO,
    Fields,
    Making,
    Plan,
    improvised_seconds,
    passages,
    section_counts,
    still,
)


def dance_fields(asked: Asked, made: Plan) -> Fields:
    """The fields from `dance` to `ending`."""
    dance: Fields = {"form": " ".join(made.letters)}
    if made.order:
        dance["order"] = "running-order"
    dance |= {
        "tempo": TEMPO,
        "phrase": 8,
        "front": "One long wall, where watchers sit.",
        "sound": {
            "kind": "drum",
            "what": "One hand drum, a steady beat with the first of each eight a little louder",
            "follows": "dancers follow the sound",
        },
    }
    found: Fields = {
        "dance": dance,
        "sections": {making.letter: _section(asked, made, making) for making in made.makings},
        "motifs": {
            making.motif: _motif(making, n) for n, making in enumerate(made.makings) if making.motif
        },
    }
    developments = {
        making.development: dict(of=making.of, device=making.device.name, **making.device.fields)
        for making in made.makings
        if making.development and making.device
    }
    if developments:
        found["developments"] = developments
    if transitions := _transitions(made):
        found["transitions"] = transitions
    if choices := _choices(made):
        found["choices"] = choices
    found["ending"] = [
        {"who": "everyone", "does": still("how the dance ends, in three counts or three breaths")}
    ]
    return found


def _section(asked: Asked, made: Plan, making: Making) -> Fields:
    pairs = making.letter == "A" and not making.improvised
    place = "Beside your partner, a big step apart" if pairs else "Own space, a big step clear"
    standing = {
        "formation": "pairs" if pairs else "scattered",
        "facing": "front",
        "place": place,
    }
    section: Fields = {"idea": still(f"what {making.part} is about, in a line")}
    if making.improvised:
        section["improvised"] = {
            "start": f"Everyone is still, ready for {making.part}.",
            "rules": [
                still(f"a rule of {making.part} for how pupils may move"),
                still(f"a rule of {making.part} for when to go and when to be still"),
                "Nobody touches. Look for the empty space before you go.",
            ],
            "seconds": "{} to {}".format(*improvised_seconds(made)),
            "ends_on": "Three slow taps on the drum. Everyone is still.",
        }
    else:
        section["counts"] = section_counts(asked, making)
    section["start"] = standing
    section["end"] = standing
    if not making.improvised:
        section["danced"] = passages(asked, making)
    elif making.motif:
        section["danced"] = [
            {
                "what": [making.motif, making.development],
                "as": "side by side",
                "parts": 2,
                "who": "each pupil chooses, and may change over",
            }
        ]  # fmt: skip
    return section


def _motif(making: Making, number: int) -> Fields:
    second: Fields = (
        dict(turn=2, **{"as": still("turn in a word")}, side="right", level="middle")
        if number % 2 == 0
        else dict(
            transfer=2, **{"as": still("lean in a word")}, side="right", dynamics=["sustained"]
        )
    )
    return {
        "from": "teacher" if making.learned else "pupils",
        "idea": still(f"what {making.motif} stands for"),
        "actions": [
            dict(
                travel=2,
                **{"as": still("travel in a word")},
                level="middle",
                direction="forwards",
                pathway="straight",
            ),
            second,
            dict(
                gesture=2,
                **{"as": still("gesture in a word")},
                level="high",
                size="small",
                body_part="arms",
                dynamics=["light"],
            ),
            dict(
                stillness=2, **{"as": still("stillness in a word")}, level="low", dynamics=["bound"]
            ),
        ],
    }


def _transitions(made: Plan) -> list[Fields]:
    if len(made.letters) < 2:
        return []
    pairs = [("any", "any")] if made.order else list(pairwise(made.letters))
    return [
        {
            "from": first,
            "to": second,
            "as": "move",
            "counts": JOIN_COUNTS,
            "how": "Walk to your place for the next part and face the front",
            "cue": "Two drum taps; the teacher shows the next letter",
        }
        for first, second in pairs
    ]  # fmt: skip


def _choices(made: Plan) -> Fields:
    found: Fields = {}
    settled = [making.settles for making in made.makings]
    if "end-shape" in settled:
        found["end-shape"] = {
            "what": "The still shape at the end of the motif",
            "from": [still("one shape to choose"), still("a second shape to choose")],
            "by": "each pupil",
            "if_not": still("the shape that you give"),
        }
    if "own-order" in settled:
        found["own-order"] = {
            "what": "The new order of the four moves",
            "from": ["Third move first", "Last move first", still("a third order to choose")],
            "by": "pairs",
            "if_not": "Third move first.",
        }
    if "own-way" in settled:
        found["own-way"] = {
            "what": "Which move is made higher or lower in the pupils' own version",
            "from": [still("one move to change"), still("a second move to change")],
            "by": "pairs",
            "if_not": still("the change that you give"),
        }
    if made.order:
        found["running-order"] = {
            "what": "The order in which the parts are danced",
            "from": [" ".join(made.letters), " ".join(reversed(made.letters))],
            "by": "class",
            "if_not": " ".join(made.letters),
        }
    return found
