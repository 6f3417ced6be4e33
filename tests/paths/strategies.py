"""Random dances that say where they go: formations, groups, steps, joins and improvised parts."""

from __future__ import annotations

from typing import Any

from hypothesis import strategies as st

from build_tools.model.dance import Dance
from build_tools.paths.hall import Hall
from build_tools.shapes.schemas import schema
from tests.paths.dances import Data, dance_of

SHARED = schema("shared")["$defs"]
FORMATIONS: list[str] = SHARED["formation"]["enum"]
FACINGS: list[str] = SHARED["facing"]["enum"]
STEPS: list[str] = SHARED["action"]["properties"]["step"]["enum"]
TURNS: list[str] = SHARED["action"]["properties"]["turn_by"]["enum"]
_STANDING = schema("unit")["$defs"]["standing"]["properties"]
WITHIN: list[str] = _STANDING["within"]["enum"]
SIDES: list[str] = _STANDING["nobody_faces"]["enum"]
ENDS: list[str] = _STANDING["larger_groups"]["enum"]
SPOTS = ["where they are", "first place", "new place"]
TOWARDS = ["partner", "centre", "home", "front", "back", "left", "right", "sea"]
NAMES = ["one", "two", "three"]

halls = st.builds(Hall, st.integers(5, 30).map(float), st.integers(5, 30).map(float))
pupils = st.integers(1, 36)
ages = st.sampled_from((4.0, 5.5, 7.0, 8.0, 11.0))


def _some(draw: st.DrawFn, data: Data, **choices: Any) -> Data:
    """`data` with each of `choices` said or not."""
    for name, strategy in choices.items():
        if draw(st.booleans()):
            data[name] = draw(strategy)
    return data


@st.composite
def standings(draw: st.DrawFn, formation: str | None = None) -> Data:
    """How dancers stand, by the schema."""
    data = {
        "formation": formation or draw(st.sampled_from(FORMATIONS)),
        "facing": draw(st.sampled_from(FACINGS)),
        "place": "In the hall",
    }
    return _some(
        draw,
        data,
        within=st.sampled_from(WITHIN),
        apart=st.integers(1, 8),
        groups_apart=st.integers(1, 8),
        columns=st.integers(1, 12),
        spot=st.sampled_from(SPOTS),
        nobody_faces=st.sampled_from(SIDES),
        larger_groups=st.sampled_from(ENDS),
    )


@st.composite
def moves(draw: st.DrawFn) -> Data:
    """One action that may go somewhere."""
    kind = draw(st.sampled_from(("travel", "travel", "turn", "jump", "gesture", "stillness")))
    return _some(
        draw,
        {kind: draw(st.sampled_from((1, 2, 3, 4, "1/2", "1 1/2")))},
        direction=st.sampled_from(SHARED["direction"]["enum"]),
        side=st.sampled_from(("left", "right")),
        facing=st.sampled_from(FACINGS),
        pathway=st.sampled_from(SHARED["pathway"]["enum"]),
        size=st.sampled_from(SHARED["size"]["enum"]),
        level=st.sampled_from(SHARED["level"]["enum"]),
        step=st.sampled_from(STEPS),
        steps=st.integers(1, 8),
        towards=st.sampled_from(TOWARDS),
        turn_by=st.sampled_from(TURNS),
    )


@st.composite
def passages(draw: st.DrawFn) -> Data:
    """One line of what is danced, whole enough to be danced."""
    fit = draw(st.sampled_from(SHARED_FITS))
    data: Data = {"what": draw(st.lists(st.sampled_from(NAMES), min_size=2, max_size=3)), "as": fit}
    if fit.startswith("canon"):
        data |= {"parts": draw(st.integers(2, 5)), "after": draw(st.integers(1, 4))}
    return _some(
        draw, data, times=st.integers(1, 2), swap=st.booleans(), towards=st.sampled_from(TOWARDS)
    )


SHARED_FITS: list[str] = schema("unit")["$defs"]["passage"]["properties"]["as"]["enum"]


@st.composite
def groups(draw: st.DrawFn) -> Data:
    """A size, perhaps with two roles, and with who dances what in a group of another size."""
    size = draw(st.integers(1, 8))
    data: Data = {"size": size}
    if size > 1 and draw(st.booleans()):
        half = draw(st.integers(1, size - 1))
        data["roles"] = {"ones": [*range(1, half + 1)], "twos": [*range(half + 1, size + 1)]}
    if draw(st.booleans()):
        data["odd"] = [draw(st.lists(st.integers(1, size), min_size=2, max_size=size + 2))]
    return data


@st.composite
def sections(draw: st.DrawFn) -> Data:
    """One section, counted or made up."""
    data: Data = {
        "idea": "an idea",
        "start": draw(standings()),
        "end": draw(standings()),
        "danced": draw(st.lists(passages(), min_size=1, max_size=3)),
    }
    if draw(st.booleans()):
        data["groups"] = draw(groups())
    if draw(st.integers(0, 3)):
        return {**data, "counts": draw(st.integers(4, 48))}
    made_up = {"start": "Now.", "rules": ["Go."], "seconds": "10 to 21", "ends_on": "A tap"}
    return {**data, "improvised": made_up}


@st.composite
def dances(draw: st.DrawFn) -> Dance:
    """A dance of up to four sections with joins of every kind."""
    letters = ["A", "B", "C"][: draw(st.integers(1, 3))]
    form = draw(st.lists(st.sampled_from(letters), min_size=1, max_size=4))
    joins = [
        {
            "from": one,
            "to": other,
            "as": draw(st.sampled_from(("move", "hold", "overlap", "cut", "straight on"))),
            "counts": draw(st.integers(1, 16)),
        }
        for one in letters
        for other in letters
    ]
    return dance_of(
        " ".join(form),
        {letter: draw(sections()) for letter in letters},
        {name: draw(st.lists(moves(), min_size=1, max_size=4)) for name in NAMES},
        transitions=joins,
        tempo=draw(st.sampled_from((90, 120, 140))),
        front=draw(st.sampled_from(("One long wall", "On all sides", "The middle of the ring"))),
        sides={"left": "sea"},
    )
