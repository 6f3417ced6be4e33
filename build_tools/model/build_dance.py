"""From a unit's document to its dance."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from build_tools.model.dance import (
    Action,
    Addition,
    Choice,
    Dance,
    Development,
    EndingPart,
    Groups,
    Heard,
    Motif,
    Passage,
    Seconds,
    Section,
    Sound,
    Standing,
    Transition,
)
from build_tools.model.known_fields import known, texts

Data = Mapping[str, Any]
ACTION_KINDS = ("travel", "turn", "jump", "gesture", "stillness", "transfer")
_USUAL_PHRASE = 8


def counts(written: int | float | str) -> Fraction:
    """Counts as an exact fraction, from 8, "1/2" or "1 1/2"."""
    if isinstance(written, int):
        return Fraction(written)
    return sum((Fraction(part) for part in str(written).split(" ")), Fraction(0))


def whole(written: int | float | None) -> int | None:
    """A whole number that may be absent; 4.0 is one too, to the schema."""
    return None if written is None else int(written)


def build_dance(data: Data) -> Dance:
    """The dance written in a unit's document."""
    dance: Data = data["dance"]
    sound = _sound(dance["sound"])
    offered = frozenset(one for c in data.get("choices", {}).values() for one in c["from"])
    return Dance(
        form=tuple(dance["form"].split(" ")),
        order_choice=dance.get("order"),
        tempo=whole(dance.get("tempo")),
        phrase=int(dance.get("phrase", _USUAL_PHRASE)),
        front=dance["front"],
        sides=texts(dance.get("sides", {})),
        sound=sound,
        sections={
            letter: _section(letter, s, data["sections"], sound)
            for letter, s in data["sections"].items()
        },
        motifs={
            name: Motif(
                name, m["from"], m["idea"], tuple(_action(a, offered) for a in m["actions"])
            )
            for name, m in data["motifs"].items()
        },
        developments={
            name: _development(name, d) for name, d in data.get("developments", {}).items()
        },
        transitions=tuple(
            Transition(
                start=t["from"],
                end=t["to"],
                kind=t["as"],
                counts=counts(t["counts"]) if "counts" in t else None,
                how=t["how"],
                cue=t["cue"],
                heard=_heard(t),
            )
            for t in data.get("transitions", [])
        ),
        choices={
            name: Choice(name, c["what"], tuple(c["from"]), c["by"], c["if_not"])
            for name, c in data.get("choices", {}).items()
        },
        ending=tuple(EndingPart(e["who"], e["does"]) for e in data["ending"]),
    )


def _action(data: Data, offered: frozenset[str] = frozenset()) -> Action:
    """An action; `offered` is all that pupils may choose, a part of the body perhaps."""
    part = data.get("body_part")
    kind = next(k for k in ACTION_KINDS if k in data)
    return Action(
        kind=kind,
        counts=counts(data[kind]),
        word=data.get("as"),
        also=tuple(data.get("with", [])),
        level=data.get("level"),
        direction=data.get("direction"),
        side=data.get("side"),
        facing=data.get("facing"),
        pathway=data.get("pathway"),
        size=data.get("size"),
        body_part=part,
        dynamics=tuple(data.get("dynamics", [])),
        step=data.get("step"),
        steps=_some(data.get("steps")),
        in_all=_some(data.get("in_all")),
        towards=data.get("towards"),
        turn_by=data.get("turn_by"),
        times=int(data.get("times", 1)),
        chosen=frozenset({"body_part"}) if part in offered else frozenset(),
    )


def _some(written: int | float | str | None) -> Fraction | None:
    """A number of counts or steps that may be absent."""
    return None if written is None else counts(written)


def _development(name: str, data: Data) -> Development:
    replace: Data = data.get("replace", {})
    keep = data.get("keep")
    return Development(
        name=name,
        of=data["of"],
        device=data["device"],
        only=tuple(int(n) for n in data.get("only", [])),
        choice=data.get("choice"),
        times=whole(data.get("times")),
        counts=tuple(counts(c) for c in data.get("counts", [])),
        size=data.get("size"),
        level=data.get("level"),
        direction=data.get("direction"),
        facing=data.get("facing"),
        pathway=data.get("pathway"),
        dynamics=tuple(data.get("dynamics", [])),
        body_part=data.get("body_part"),
        order=tuple(int(n) for n in data.get("order", [])),
        replaced=int(replace["action"]) if replace else None,
        replacement=_action(replace["by"]) if replace else None,
        left_out=tuple(int(n) for n in data.get("leave_out", [])),
        added=tuple(Addition(int(a["after"]), _action(a["action"])) for a in data.get("add", [])),
        kept=(int(keep[0]), int(keep[1])) if keep else None,
        joined_to=data.get("and"),
        formation=data.get("formation"),
        dancers=data.get("dancers"),
        relationship=data.get("relationship"),
    )


_LASTS = ("counts", "timed", "improvised")


def _whole_section(own: Data, sections: Mapping[str, Data]) -> Data:
    """A section's fields: of one that comes back changed, its own and the rest from the first."""
    if "returns" not in own:
        return own
    first = sections[own["returns"]]
    lasts_otherwise = any(one in own for one in _LASTS)
    kept = {n: one for n, one in first.items() if not (lasts_otherwise and n in _LASTS)}
    return {**kept, **own}


def _section(letter: str, own: Data, sections: Mapping[str, Data], usual: Sound) -> Section:
    data = _whole_section(own, sections)
    improvised: Data = data.get("improvised", {})
    uncounted: Data = improvised or data.get("timed", {})
    return Section(
        letter=letter,
        idea=data["idea"],
        counts=counts(data["counts"]) if "counts" in data else None,
        seconds=_seconds(uncounted["seconds"]) if uncounted else None,
        ends_on=uncounted.get("ends_on"),
        improvised_from=improvised.get("start"),
        improvised_rules=tuple(improvised.get("rules", [])),
        start=_standing(data["start"]),
        end=_standing(data["end"]),
        danced=tuple(_passage(p) for p in data.get("danced", [])),
        sound=_sound(data["sound"]) if "sound" in data else usual,
        name=data.get("name"),
        groups=_groups(data["groups"]) if "groups" in data else None,
        heard=_heard(data),
        returns=own.get("returns"),
        changes=tuple(n for n in own if n != "returns") if "returns" in own else (),
    )


def _standing(data: Data) -> Standing:
    return Standing(
        **{
            **known(Standing, data),
            "apart": _some(data.get("apart")),
            "groups_apart": _some(data.get("groups_apart")),
            "columns": whole(data.get("columns")),
            "clusters": whole(data.get("clusters")),
            "free": tuple((side, counts(n)) for side, n in sorted(data.get("free", {}).items())),
        }
    )


def _groups(data: Data) -> Groups:
    roles: Mapping[str, list[int]] = data.get("roles", {})
    return Groups(
        int(data["size"]),
        {role: _places(at) for role, at in roles.items()},
        tuple(_places(one) for one in data.get("odd", [])),
    )


def _places(written: list[int]) -> tuple[int, ...]:
    return tuple(int(one) for one in written)


def _heard(data: Data) -> tuple[Heard, ...]:
    return tuple(
        Heard(
            sound=h["sound"],
            counts=_some(h.get("counts")),
            seconds=whole(h.get("seconds")),
            by=h.get("by"),
            on=tuple(counts(n) for n in h.get("on", [])),
            louder=tuple(counts(n) for n in h.get("louder", [])),
            says=tuple(h.get("says", [])),
        )
        for h in data.get("heard", [])
    )


def _seconds(written: int | float | str) -> Seconds:
    least, _, most = str(written).partition(" to ")
    return Seconds(Fraction(least), Fraction(most or least))


def _passage(data: Data) -> Passage:
    return Passage(
        what=tuple(data["what"]),
        fit=data["as"],
        times=int(data.get("times", 1)),
        parts=whole(data.get("parts")),
        after=counts(data["after"]) if "after" in data else None,
        who=data.get("who"),
        roles=tuple(data.get("roles", [])),
        swap=data.get("swap", False),
        others=data.get("others", "hold"),
        towards=data.get("towards"),
    )


def _sound(data: Data) -> Sound:
    return Sound(
        kind=data["kind"],
        what=data["what"],
        follows=data["follows"],
        lasts=whole(data.get("lasts")),
        looped=data.get("looped", False),
        file=data.get("file"),
    )
