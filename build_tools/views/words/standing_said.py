"""How dancers stand, in plain words: their formation, which way they face, who stands where."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from build_tools.model.dance import Dance, Standing
from build_tools.page_words.forms import number_in_words
from build_tools.page_words.words import N_, _, of_schema
from build_tools.views.dance.waiting import sits_to_sound
from build_tools.views.words.sides_named import NO_NAMES, side_in_words

_FORMATIONS = {
    "V": N_("in a V shape"),
    "cluster": N_("close together"),
    "pairs": N_("in pairs"),
    "small groups": N_("in small groups"),
    "scattered": N_("spread out"),
    "two lines": N_("in two lines"),
    "rows": N_("in rows"),
    "file": N_("one behind another"),
}
_FACINGS = {
    "front": N_("facing the front"),
    "back": N_("facing the back"),
    "left": N_("facing the left"),
    "right": N_("facing the right"),
    "centre": N_("facing the middle"),
    "outwards": N_("facing out"),
    "partner": N_("facing a partner"),
    "mixed": N_("facing different ways"),
}
_LARGER = {
    "left end of the front row": N_("A larger group stands at the left end of the front row."),
    "right end of the front row": N_("A larger group stands at the right end of the front row."),
    "left end of the back row": N_("A larger group stands at the left end of the back row."),
    "right end of the back row": N_("A larger group stands at the right end of the back row."),
}


def standing_in_words(standing: Standing, sides: Mapping[str, str] = NO_NAMES) -> str:
    """How the dancers stand: in pairs, facing a partner; sides of the hall by their own names."""
    where = formation_in_words(standing.formation)
    if standing.formation == "scattered" and standing.clusters:
        where = _("in {number} loose groups", number=number_in_words(standing.clusters))
    if standing.facing == "mixed" and standing.each_group_one_way:
        return _("{where}, each group facing its own way", where=where)
    if standing.facing == "mixed" and standing.nobody_faces:
        return _(
            "{where}, facing any way but {side}",
            where=where,
            side=side_in_words(standing.nobody_faces, sides),
        )
    return f"{where}, {facing_in_words(standing.facing, sides)}"


def formation_in_words(formation: str) -> str:
    """The shape that dancers make: in pairs, in a circle."""
    known = _FORMATIONS.get(formation)
    return _(known) if known else _("in a {formation}", formation=of_schema(formation))


def facing_in_words(facing: str, sides: Mapping[str, str] = NO_NAMES) -> str:
    """Which way somebody faces: a partner, the middle, or a side by its own name."""
    if facing in sides:
        return _("facing {what}", what=side_in_words(facing, sides))
    return _(_FACINGS[facing])


def anywhere_in_words(size: int) -> str:
    """That a plan shows one way of many, where groups of `size` have no places of their own."""
    if size == 2:
        return _("An example. Pairs may stand anywhere.")
    return _("An example. Groups may stand anywhere.")


def larger_groups_in_words(standing: Standing) -> Iterator[str]:
    """Where a group stands that is larger than most, if the unit says it."""
    if standing.larger_groups is not None:
        yield _(_LARGER[standing.larger_groups])


def sit_to_sound_in_words(dance: Dance) -> Iterator[str]:
    """That some of those who are drawn sit all through, since they sound what follows the dance."""
    if sits_to_sound(dance):
        yield _("All are drawn: those who sit and make the sound leave their places empty.")
