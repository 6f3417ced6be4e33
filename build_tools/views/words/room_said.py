"""How a class dances in a hall, in the sentences that every page says of it.

`site_overrides/sums/floor-room-said.js` says the same on the pages; generated dances hold the two
together.
"""

from __future__ import annotations

from build_tools.page_words.forms import number_counting
from build_tools.page_words.words import N_, NN_, _, ngettext
from build_tools.views.dance.room_to_dance import Room
from build_tools.views.dance.teams import Team
from build_tools.views.words.groups_in_words import group_named, groups_in_words
from build_tools.views.words.plain_words import listed
from build_tools.views.words.punctuation import sentence

_MARK = N_("Chalk a line one big step from each wall; who reaches it dances on the spot.")
_CLOSE = N_("Not even a quarter of the class has the room it needs: dance it on the spot.")
_OWN_WAY = N_("Danced as it is drawn, not even a quarter of the class has the room it needs here.")
_SMALL = N_("The floor is too small for all to dance at once.")
_TURNS = {
    "same": (N_("One team at a time dances in the middle of the hall, always on the same spots."),),
    "but odd groups": (
        N_("One team at a time dances in the middle of the hall, always on the same spots."),
        N_("A group of another size needs marks of its own."),
    ),
    "none": (N_("One team at a time dances in the middle of the hall."),),
}
"""By whether the teams stand on the same spots."""
_CLOSER = NN_(
    "pupils in part {parts} would stand closer than the dance asks",
    "pupils in parts {parts} would stand closer than the dance asks",
)
_WITHOUT = {
    (False, False): N_("If all danced at once as it is drawn, {wrong}."),
    (True, False): N_("With a long wall as the front, {wrong}."),
    (False, True): N_("With whole steps, {wrong}."),
    (True, True): N_("Danced as it is drawn, {wrong}."),
}
"""What would be wrong without a change of the front, and of the steps, where all dance at once with
it; the first of them where not all can."""
_SHORT_FRONT = N_("With a short wall as the front, {wrong}.")
_SIDES = ("front", "back", "left", "right")


def room_in_words(room: Room, *, own_way: bool = False) -> str:
    """Who dances at once, what to change, and why, in a few sentences.

    `own_way` is whether the author's own way in such a hall is told beside it, where none is found.
    """
    small = "" if room.enough else _(_SMALL)
    if not room.found:
        if own_way:
            return _(_OWN_WAY)
        last = _(_CLOSE if room.closer else _MARK)
        return " ".join(filter(None, (small or why_in_words(room), last)))
    how = how_in_words(room)
    if room.sharing.dancing != (room.pupils,):
        told = (sharing_in_words(room), *how, small or why_in_words(room))
        return " ".join(filter(None, told))
    said = _("All {pupils} can dance at once.", pupils=room.pupils)
    return " ".join(filter(None, (said, *how, why_in_words(room) if how else "")))


def at_once_in_short(room: Room) -> str:
    """How many dance at once, in one short sentence, for who chooses among units."""
    if room.sharing.teams:
        teams = number_counting(len(room.sharing.teams))
        return _(
            "{pupils} pupils dance in {teams} teams, in turns.", pupils=room.pupils, teams=teams
        )
    many = listed([str(one) for one in sorted(set(room.sharing.dancing))], "or")
    if room.sharing.waiting:
        return _("{pupils} of {all} pupils dance at once.", pupils=many, all=room.pupils)
    return _("All {pupils} can dance at once.", pupils=room.pupils)


def sharing_in_words(room: Room) -> str:
    """Who dances and who sits, where not all dance at once: the teams, or who sits each time."""
    teams, waiting = room.sharing.teams, room.sharing.waiting
    where = room.waiting.where or sit_in_words(room.lined)
    does = does_in_words(room)
    if waiting:
        many = [str(one) for one in sorted(room.sharing.dancing)]
        return ngettext(
            "{pupils} can dance at once: {groups} sits {where}. {does} "
            "Change who sits each time it is danced.",
            "{pupils} can dance at once: {groups} sit {where}. {does} "
            "Change who sits each time it is danced.",
            waiting,
            pupils=listed(many, "or"),
            groups=group_named(room.groups.usual, waiting),
            where=where,
            does=does,
        )
    if not teams:
        return ""
    named = " ".join(team_in_words(n, team) for n, team in enumerate(teams, start=1))
    return " ".join(
        (
            _(
                "The class is {teams} teams, the same in every lesson. {named}",
                teams=number_counting(len(teams)),
                named=named,
            ),
            *(_(words) for words in _TURNS[room.spots]),
            ngettext(
                "The other sits {where}.", "The others sit {where}.", len(teams) - 1, where=where
            ),
            does,
        )
    )


def does_in_words(room: Room) -> str:
    """What those do who sit: as the unit says, or what goes with the sound of the dance."""
    if room.waiting.does:
        return sentence(room.waiting.does)
    if room.waiting.counts:
        return _("Those who sit count aloud.")
    if room.groups.usual == 1:
        return _("Each of them watches one dancer.")
    return _("Each of them watches {group}.", group=group_named(room.groups.usual, 1))


def team_in_words(number: int, team: Team) -> str:
    """Team 1: four fours, 16."""
    if max(team) == 1:
        return _("Team {team}: {pupils} pupils.", team=number, pupils=len(team))
    groups = groups_in_words(team)
    return _("Team {team}: {groups}, {pupils}.", team=number, groups=groups, pupils=sum(team))


def sit_in_words(lined: frozenset[str]) -> str:
    """Where those sit who do not dance."""
    if len(lined) == len(_SIDES):
        return _("round the edge")
    if not lined:
        return _("in the middle, facing out,")
    if lined == {"left", "right"}:
        return _("at both ends")
    return _("along the front and the back") if "back" in lined else _("along the front")


def how_in_words(room: Room) -> list[str]:
    """What to change, a sentence each."""
    how = []
    if room.turned:
        how.append(
            _("Take a short wall as the front.")
            if _is_wide(room)
            else _("Take a long wall as the front.")
        )
    if room.stride != 1:
        how.append(_("Make every travelling step half as long."))
    return how


def _is_wide(room: Room) -> bool:
    """Whether the front of the hall as it is drawn is one of its long walls."""
    return room.hall.depth < room.hall.width


def why_in_words(room: Room) -> str:
    """What would be wrong if all danced at once as it is drawn; nothing where all is well.

    Where all can with the front along another wall, or with other steps, without that.
    """
    near = [
        _("{number} in part {part}", number=many, part=part)
        if n
        else ngettext(
            "{number} pupil in part {part}", "{number} pupils in part {part}", many, part=part
        )
        for n, (part, many) in enumerate(room.leaving)
    ]
    walls = _("{pupils} would come too near a wall", pupils=listed(near)) if near else ""
    close = ngettext(*_CLOSER, len(room.closer), parts=listed(room.closer)) if room.closer else ""
    wrong = walls or close
    if walls and close:
        wrong = _("{walls}, and {close}", walls=walls, close=close)
    return _(_without(room), wrong=wrong) if wrong else ""


def _without(room: Room) -> str:
    """What is said of it where that is not changed; as its message, asked for when it is said."""
    all_at_once = room.found and room.sharing.dancing == (room.pupils,)
    turned, shorter = all_at_once and room.turned, all_at_once and room.stride != 1
    if turned and not shorter and not _is_wide(room):
        return _SHORT_FRONT
    return _WITHOUT[turned, shorter]
