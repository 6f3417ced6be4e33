"""The steps of a draft's lessons, each with the minutes it needs."""

from __future__ import annotations

from dataclasses import dataclass

from build_tools.drafting.asked import Asked
from build_tools.drafting.minutes import MinutesWanted
from build_tools.drafting.plan import MOTIF_COUNTS, Fields, Making, section_counts, still

_WARM_UPS = (
    "Walk for eight, be still for eight. Reach high, curl low, turn once each way.",
    "Walk, be still. Stretch one arm, then the other. Turn once each way on small steps.",
    "Walk in curves, be still. Reach wide, fold small, and lean from foot to foot.",
    "Walk low, walk tall, be still. Open and close your arms. Turn once each way.",
)


@dataclass(frozen=True, slots=True)
class TimedStep:
    """One step without its minutes, and the minutes it needs."""

    fields: Fields
    wanted: MinutesWanted


def timed(least: int, share: int, most: int, phase: str, does: str, **fields: object) -> TimedStep:
    """A step from its minutes and its fields in the order they are written."""
    return TimedStep({"phase": phase, "does": does, **fields}, MinutesWanted(least, share, most))


def most_talk(asked: Asked) -> int:
    """The most minutes that pupils of this age sit and talk in one piece."""
    return 4 if asked.young else 6


def warm_up(number: int, least: int) -> TimedStep:
    """The warm-up of lesson `number`."""
    return timed(
        least, 5, 10, "warm-up", "Walk, reach, turn and stop",
        grouping="alone", intensity="steady",
        say="Freeze and my raised hand mean stop. Find the empty space. Nobody touches.",
        task=_WARM_UPS[(number - 1) % len(_WARM_UPS)],
        look_for="Everyone still within two counts.",
        easier="Walk only.",
        harder="Change the way you go after each stop.",
    )  # fmt: skip


def cool_down(least: int = 2) -> TimedStep:
    """The cool-down of any lesson."""
    return timed(
        least, 3, 8, "cool-down", "Slow down and breathe",
        grouping="alone", intensity="gentle",
        task="Sink slowly, rise slowly. Be still for three slow breaths.",
    )  # fmt: skip


def recall(number: int, letter: str) -> TimedStep:
    """The recall of what lesson `number` - 1 last made."""
    return timed(
        2, 3, 8, "recall", f"Dance part {letter} again",
        grouping="whole class",
        task=f"Dance part {letter} once; if it was unclear, its start first, slowly.",
        ask=[
            {
                "question": f"What is clearer than in lesson {number - 1}?",
                "answers": ["we start together", still("another answer pupils may give")],
                "looks_back_to": number - 1,
            }
        ],
        look_for="Stillness before the start.",
        dances=[letter],
        easier=f"Follow a friend through part {letter}.",
        harder=f"Change the level of one move in part {letter}.",
    )  # fmt: skip


def explore(making: Making) -> TimedStep:
    """Finding movement for the part that the lesson makes."""
    part = making.part
    task = (
        f"what pupils try slowly from the steps of {part}"
        if making.learned
        else f"what pupils try out for {part}, from what you showed"
    )
    return timed(
        2, 5, 15, "explore", f"Find ways to move for {part}",
        grouping="alone", intensity="steady",
        say=still(f"what you say to set {part} going"),
        task=still(task),
        ask=[
            {
                "question": "What did your body do that fits our idea?",
                "answers": [still(f"what pupils may say of {part}")],
            }
        ],
        look_for="Many different answers, with space around each.",
        easier=f"Try one idea for {part}, small, then big.",
        harder=f"Try each idea for {part} with a new body part.",
    )  # fmt: skip


def make(making: Making, *, whole_section: bool) -> TimedStep:
    """Fixing the motif, or the rules of an improvised part."""
    part = making.part
    settles: Fields = {"settles": [making.settles]} if making.settles == "end-shape" else {}
    makes = [*([making.motif] if making.motif else []), *([making.letter] if whole_section else [])]
    if making.motif is None:
        return timed(
            5, 7, 120, "make", f"Set the rules of {part} and try them",
            grouping="alone", intensity="steady",
            say=f"We make {part} up as we go. We improvise, inside our rules.",
            task=f"Say the rules aloud to remember them. Then dance {part} for twenty seconds, "
            "from stillness to stillness.",
            look_for="Everyone keeps the rules, each in their own way.",
            makes=makes,
            teaches=["improvise"],
            easier=f"Keep one rule of {part} and let the teacher call the other.",
            harder=f"Add a pause of your own inside the rules of {part}.",
        )  # fmt: skip
    four = f"Learn the four moves of {part}" if making.learned else f"Make four moves for {part}"
    task = f"{four}, eight counts in all. Say the words to remember them."
    return timed(
        5, 7, 120, "make", f"Set four moves on eight counts for {part}",
        grouping="alone", intensity="steady", counts=MOTIF_COUNTS,
        say=still(f"the four moves of {part} said on their counts"),
        task=task,
        you="Count eight aloud, again and again.",
        look_for="Four moves, two counts each, then still.",
        makes=makes,
        **settles,
        **({"teaches": ["motif"]} if making.letter == "A" else {}),
        easier=f"Leave one move of {part} out.",
        harder=f"Join the moves of {part} with no stop between them.",
    )  # fmt: skip


def second_make(asked: Asked, making: Making) -> TimedStep:
    """Putting a motif that is not changed in its lesson into its section, or playing on."""
    part = making.part
    if making.motif is None:
        return timed(
            3, 5, 120, "make", f"Make the start and the end of {part} clear",
            grouping="pairs", into="Turn to the person nearest you. One over makes a three.",
            intensity="steady",
            task=f"Watch your partner start and end {part}. Agree what makes it clear, and try it "
            "again for twenty seconds.",
            look_for="A still start and a still end.",
            dances=[making.letter],
            easier="Agree the end only.",
            harder="Start and end at the same moment with no sign.",
        )  # fmt: skip
    return timed(
        3, 5, 120, "make", f"Put {part} together with a partner",
        grouping="pairs", into="Turn to the person nearest you. One over makes a three.",
        intensity="steady", counts=section_counts(asked, making),
        say="Wait in stillness, then go on one.",
        task=f"Dance the moves together, then take turns. That makes {part}. "
        "Say the words to remember it.",
        look_for="Whoever waits is still.",
        makes=[making.letter],
        easier="Nod to your partner when it is time to go.",
        harder="Go at another level than the one before you.",
    )  # fmt: skip


def develop(asked: Asked, making: Making) -> TimedStep:
    """Changing the motif by one device and making the section of it."""
    part, device = making.part, making.device
    assert device is not None
    length = "twenty seconds" if making.improvised else f"{section_counts(asked, making)} counts"
    settles: Fields = (
        {"settles": [making.settles]} if making.settles in ("own-order", "own-way") else {}
    )
    # what the step says tells the device in plain words; two new words are enough in a lesson
    teaches = ["improvise"] if making.improvised else [device.name]
    counts: Fields = {} if making.improvised else {"counts": section_counts(asked, making)}
    if making.motif is None:
        return timed(
            5, 7, 120, "develop", f"Change one thing for {part}",
            grouping="pairs", into="Turn to the person nearest you. One over makes a three.",
            intensity="steady", counts=device.counts,
            say=device.say,
            task=f"Dance the moves you know, then change them, {device.counts} counts. "
            "Count aloud to remember them.",
            look_for="A watcher can say what has changed.",
            develops=[making.development],
            **settles,
            teaches=teaches,
            easier=f"Change a single move for {part}; walk it first.",
            harder="Make the change clear to anyone.",
        )  # fmt: skip
    return timed(
        3, 6, 120, "develop", f"Change one thing and make {part}",
        grouping="pairs", into="Turn to the person nearest you. One over makes a three.",
        intensity="steady", **counts,
        say=device.say,
        task=f"Dance the moves as they were, then changed. Make {part}, {length} long. Say the "
        "words to remember it.",
        look_for="A watcher can say what has changed.",
        makes=[making.letter],
        develops=[making.development],
        **settles,
        teaches=teaches,
        easier=f"Change a single move of {part}, and walk it first.",
        harder=f"Make the change in {part} clear to anyone.",
    )  # fmt: skip


def second_develop(asked: Asked, making: Making) -> TimedStep:
    """Making the section of a change, where the lesson makes no motif of its own."""
    part = making.part
    return timed(
        3, 5, 120, "make", f"Put {part} together",
        grouping="pairs", into="Stay with your partner. A three stays a three.",
        intensity="steady", counts=section_counts(asked, making),
        say="Wait in stillness, then go on one.",
        task=f"Make {part} from the changed moves, {section_counts(asked, making)} counts long. "
        "Count it aloud to remember it.",
        look_for="Partners start and end together.",
        makes=[making.letter],
        easier=f"Dance half of {part}, then be still.",
        harder=f"Dance {part} with your backs to each other.",
    )  # fmt: skip


def rehearse(making: Making) -> TimedStep:
    """Dancing the new section twice."""
    return timed(
        2, 4, 12, "rehearse", f"Dance {making.part} twice",
        grouping="whole class", intensity="steady",
        task=f"Dance {making.part}. Rest, and say what to mend. Dance it again.",
        you="Count four aloud before each start.",
        look_for="The start and the end are still.",
        dances=[making.letter],
        easier=f"Dance {making.part} once, then watch it once.",
        harder=f"Change the direction of one move in {making.part}.",
    )  # fmt: skip


def show_part(asked: Asked, making: Making, who: str) -> TimedStep:
    """Showing the new section and talking about it. `who` is who looks."""
    most = most_talk(asked)
    halves = who == "half the class"
    into = (
        "Those nearest the front sit. The others dance first."
        if halves
        else "Stay with your partner. A three stays a three."
        if who == "partner"
        else "Sit with the next pair. A pair over joins them."
    )
    return timed(
        3, 4, most, "look and talk", f"Show {making.part} and say what you saw",
        grouping="half class" if halves else "pairs", into=into,
        task=f"Dance {making.part} while the others watch. Swap, then talk.",
        shows=[making.letter],
    )  # fmt: skip
