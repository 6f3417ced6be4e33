"""The steps in which a draft's dance is whole: joining, running, showing, talking about it."""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.drafting.asked import Asked
from build_tools.drafting.plan import Fields
from build_tools.drafting.steps import TimedStep, most_talk, timed
from build_tools.views.words.plain_words import listed


def join(letters: Sequence[str], *, settles: bool, least: int = 3) -> TimedStep:
    """Joining sections: each place and each join is walked before it is danced."""
    order: Fields = {"settles": ["running-order"]} if settles else {}
    choose = "Choose the order of the parts. " if settles else ""
    return timed(
        least, 5, 20, "join", f"Join parts {listed(letters)}",
        grouping="whole class", intensity="steady",
        say="Finish one part, and be still. Two taps, then walk to your next place.",
        task=f"{choose}Walk each join, eight counts. Then dance the parts with their joins.",
        look_for="Everyone in place by eight.",
        joins=list(letters),
        dances=list(letters),
        **order,
        easier="Watch one join, then dance it.",
        harder="Walk each join on a new pathway.",
    )  # fmt: skip


def run(minutes: int, *, again: bool) -> TimedStep:
    """One whole run of the dance; the second comes after mending one thing."""
    if again:
        return timed(
            minutes, 5, 15, "rehearse", "Mend one thing, run the whole again",
            grouping="whole class", intensity="steady",
            say="Make it clear for someone new.",
            task="Practise the place that was least clear. Then dance the whole again.",
            look_for="The mended place.",
            dances=["whole"],
            easier="Choose one move to make clearer.",
            harder="Choose one thing more to mend.",
        )  # fmt: skip
    return timed(
        minutes, 4, 10, "rehearse", "Run the whole dance",
        grouping="whole class", intensity="steady",
        say="If you lose your way, be still, then join in.",
        task="Dance the whole. Rest, and say what to mend.",
        look_for="Stillness at the start and at the end.",
        dances=["whole"],
        easier="Look at the letters between the parts.",
        harder="Change the size of one move in each part.",
    )  # fmt: skip


def show_whole(minutes: int) -> TimedStep:
    """Each half of the class shows the whole dance to the other."""
    return timed(
        minutes, 5, 15, "show", "Each half shows the whole dance",
        grouping="half class",
        into="Half the pairs dance. The rest sit at the front. Then swap.",
        intensity="steady",
        say="Watchers, look for one clear change. Dancers, start from stillness.",
        task="Dance the whole. Hold the ending for three breaths. Swap, and talk.",
        look_for="One ending, held by all.",
        shows=["whole"],
    )  # fmt: skip


def talk(asked: Asked, does: str, task: str, grouping: str = "pairs") -> TimedStep:
    """Talking, with nothing danced."""
    most = most_talk(asked)
    return timed(
        2, 3, most, "look and talk", does,
        grouping=grouping, into="Sit with your partner. One over makes a three.", task=task,
    )  # fmt: skip
