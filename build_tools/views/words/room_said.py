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
    "If all danced at once as it is drawn, pupils in part {parts} would stand closer than the "
    "dance asks.",
    "If all danced at once as it is drawn, pupils in parts {parts} would stand closer than the "
    "dance asks.",
)
_CLOSER_TOO = NN_(
    "Pupils in part {parts} would stand closer than the dance asks.",
    "Pupils in parts {parts} would stand closer than the dance asks.",
)
_SIDES = ("front", "back", "left", "right")


def room_in_words(room: Room) -> str:
    """What to do, who dances at once, and why, in a few sentences."""
    walls, small = why_in_words(room), "" if room.enough else _(_SMALL)
    if not room.found:
        return " ".join(filter(None, (small or walls, _(_CLOSE if room.closer else _MARK))))
    all_at_once = room.sharing.dancing == (room.pupils,)
    how = _how(room)
    said = _("All {pupils} can dance at once.", pupils=room.pupils) if all_at_once else ""
    why = small or walls if not all_at_once or how else ""
    return " ".join(filter(None, (said, *how, sharing_in_words(room), why)))


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


def _how(room: Room) -> list[str]:
    """What to change, a sentence each."""
    how = []
    if room.turned:
        short = room.hall.depth < room.hall.width
        how.append(
            _("Take a short wall as the front.") if short else _("Take a long wall as the front.")
        )
    if room.stride != 1:
        how.append(_("Make every travelling step half as long."))
    return how


def why_in_words(room: Room) -> str:
    """What would be wrong if all danced at once as it is drawn; nothing where all is well."""
    near = [
        _("{number} in part {part}", number=many, part=part)
        if n
        else ngettext(
            "{number} pupil in part {part}", "{number} pupils in part {part}", many, part=part
        )
        for n, (part, many) in enumerate(room.leaving)
    ]
    found = []
    if near:
        found.append(
            _(
                "If all danced at once as it is drawn, {pupils} would come too near a wall.",
                pupils=listed(near),
            )
        )
    if room.closer:
        said = _CLOSER_TOO if near else _CLOSER
        found.append(ngettext(*said, len(room.closer), parts=listed(room.closer)))
    return " ".join(found)
