"""The lesson files of a draft."""

from __future__ import annotations

from collections.abc import Sequence

from build_tools.drafting import steps
from build_tools.drafting import steps_of_whole as whole
from build_tools.drafting.asked import Asked
from build_tools.drafting.minutes import share_out
from build_tools.drafting.plan import Fields, Making, Plan, dance_seconds, still
from build_tools.drafting.steps import TimedStep
from build_tools.drafting.unit_fields import lesson_words
from build_tools.views.words.plain_words import listed

_LOOKERS = ("half the class", "partner", "another pair")
_CHANGE_OVER, _TALK = 15, 60
"""Seconds for one change-over of groups, and for talking after a showing."""
_ROOM_TO_REHEARSE, _ROOM_TO_JOIN = 25, 30
"""From how many minutes a lesson that makes something has room for these steps too."""
_END_POINTS = ("in-time", "show-the-idea", "see-and-say")


def lesson_fields(asked: Asked, made: Plan, number: int) -> Fields:
    """Every field of the file of lesson `number`, from 1, in the order of the schema."""
    last = number == asked.lessons
    if number <= asked.making_lessons:
        making = made.makings[number - 1]
        timed = _making(asked, made, number)
        focus = _focus(making, alone=asked.lessons == 1)
        words = lesson_words(made, number - 1)
    else:
        making = made.makings[-1]
        timed = _showing(asked, made, number) if last else _joining(asked, made, number)
        focus = (
            "Run the whole dance, mend it, show it and say how it has grown"
            if last
            else "Join the parts into one dance and run the whole"
        )
        words = {"whole run": "the dance from start to end with no stop"}
    found: Fields = {
        "lesson": number,
        "title": still(f"title of lesson {number} in two to six words"),
        "focus": focus,
        "pupils_make": still(f"what pupils will have made by the end of lesson {number}"),
        "minutes": asked.minutes,
        "collect": _collect(made, number, asked),
        "classroom_first": [still(f"what to show again and ask before lesson {number}")],
    }
    if number > 1:
        found |= _so_far(made, number, asked)
    found["steps"] = _with_minutes(asked.minutes, timed)
    found["look_and_talk"] = _look_and_talk(asked, number, making)
    found |= _round_the_steps(making, last=last)
    if words:
        found["words"] = words
    return found


def lesson_notes(asked: Asked, made: Plan, number: int) -> str:
    """The notes below the fields."""
    if number > asked.making_lessons:
        return (
            "Nothing new is made today. When you talk, begin with what was seen. If families or "
            "another class are coming, ask the school first about visitors, about recording and "
            "about any music.\n"
            if number == asked.lessons
            else "Expect the first run to be rough, and do not stop it. Mend one join only.\n"
        )
    part = made.makings[number - 1].part
    hint = f"a move of {part} in your words, then how it goes seated and on wheels; a line each"
    return (
        f"You do not need to dance. Read the words of {part}, tap a steady beat, and look.\n\n"
        f"- {still(hint)}\n"
    )


def _focus(making: Making, *, alone: bool) -> str:
    if making.motif is None:
        what = (
            f"Change the motif for {making.part}"
            if making.development
            else f"Find and fix the rules of {making.part}"
        )
    elif making.learned:
        what = f"Learn the moves of {making.part}"
    else:
        what = f"Find and fix a motif for {making.part}"
    if making.development and making.motif:
        what += ", then change one thing in it"
    return f"{what}, and show it" if alone else what


def _making(asked: Asked, made: Plan, number: int) -> list[TimedStep]:
    making = made.makings[number - 1]
    alone = asked.lessons == 1
    found = [steps.warm_up(number, 2 if asked.minutes < _ROOM_TO_REHEARSE else 3)]
    if number > 1:
        found.append(steps.recall(number, made.letters[number - 2]))
    found.append(steps.explore(making))
    if making.development is None:
        found += [
            steps.make(making, whole_section=making.motif is None),
            steps.second_make(asked, making),
        ]
    elif making.motif is None:
        found.append(steps.develop(asked, making))
        found.append(steps.second_develop(asked, making))
    else:
        found += [
            steps.make(making, whole_section=False),
            steps.develop(asked, making),
        ]
    if alone:
        found += [
            whole.run(1, again=False),
            whole.run(2, again=True),
            whole.show_whole(_show_minutes(asked, made)),
        ]
    else:
        joins = asked.lessons in (3, 4) and number > 1 and asked.minutes >= _ROOM_TO_JOIN
        if joins:
            settles = made.order and number == asked.making_lessons
            found.append(whole.join(made.letters[:number], settles=settles))
        if asked.minutes >= _ROOM_TO_REHEARSE:
            found.append(steps.rehearse(making))
        found.append(steps.show_part(asked, making, _who(number)))
    return [*found, steps.cool_down()]


def _joining(asked: Asked, made: Plan, number: int) -> list[TimedStep]:
    length = _run_minutes(asked, made)
    return [
        steps.warm_up(number, 2),
        steps.recall(number, made.letters[-1]),
        whole.join(made.letters, settles=made.order, least=4),
        whole.run(length, again=False),
        whole.talk(
            asked,
            "Say which join to mend",
            "Say which join worked. Say which to mend, and how.",
        ),
        whole.run(length + 1, again=True),
        steps.cool_down(),
    ]


def _showing(asked: Asked, made: Plan, number: int) -> list[TimedStep]:
    length = _run_minutes(asked, made)
    found = [steps.warm_up(number, 2), steps.recall(number, made.letters[-1])]
    if asked.lessons in (3, 4):
        settles = made.order and asked.minutes < _ROOM_TO_JOIN
        found.append(whole.join(made.letters, settles=settles))
    found += [
        whole.run(length, again=False),
        whole.run(length + 1, again=True),
        whole.show_whole(_show_minutes(asked, made)),
    ]
    if asked.minutes >= _ROOM_TO_JOIN:
        found.append(
            whole.talk(
                asked,
                "Say what you saw",
                "Tell your partner one thing you saw. Then share it with the class.",
            )
        )
    return [*found, steps.cool_down()]


def _run_minutes(asked: Asked, made: Plan) -> int:
    return max(2, -(-dance_seconds(asked, made) // 60))


def _show_minutes(asked: Asked, made: Plan) -> int:
    """Two halves, each with its change-over, and a minute's talk; in whole minutes."""
    return -(-(2 * (dance_seconds(asked, made) + _CHANGE_OVER) + _TALK) // 60)


def _with_minutes(minutes: int, timed: Sequence[TimedStep]) -> list[Fields]:
    shares = share_out(minutes, [step.wanted for step in timed])
    found = []
    for step, share in zip(timed, shares, strict=True):
        least = min(share, step.wanted.least)
        phase, does, *rest = step.fields.items()
        times: Fields = {"minutes": share}
        if least < share:
            times["least"] = least
        found.append(dict([phase, does]) | times | dict(rest))
    return found


def _who(number: int) -> str:
    return _LOOKERS[(number - 1) % len(_LOOKERS)]


def _collect(made: Plan, number: int, asked: Asked) -> list[str]:
    if number > asked.making_lessons:
        return ["A drum", f"Letter cards: {', '.join(made.letters)}"]
    making = made.makings[number - 1]
    found = ["A drum", "What you show of the stimulus"]
    return [*found, f"Word cards for {making.part}"] if making.motif else found


def _so_far(made: Plan, number: int, asked: Asked) -> Fields:
    done = made.letters[: number - 1]
    before = done[-1] if number - 1 <= asked.making_lessons else None
    parts = f"part{'' if len(done) == 1 else 's'} {listed(done)}"
    if before is None:
        return {
            "story_so_far": f"The class has made {parts}, joined them and run the whole dance.",
            "never_did_last": "Walk the joins in recall. Then run the whole twice and show it "
            "another day.",
        }
    return {
        "story_so_far": f"The class has made {parts}.",
        "never_did_last": f"In recall, teach part {before} from its cards.",
    }


def _look_and_talk(asked: Asked, number: int, making: Making) -> Fields:
    last = number == asked.lessons
    joining = number > asked.making_lessons
    what = "the whole dance" if joining or last else making.part
    questions: list[Fields] = [
        {
            "question": f"What did you see in {what}?",
            "answers": [still(f"what pupils may have seen in lesson {number}")],
        }
    ]
    if last and number > 1:
        questions.append(
            {
                "question": "How has our dance grown since lesson 1?",
                "answers": [still("how pupils may say the dance has grown")],
                "looks_back_to": 1,
            }
        )
    else:
        questions.append(
            {
                "question": f"What would make {what} clearer?",
                "answers": ["hold still for longer"],
            }
        )
    return {
        "who": "half the class" if last else "yourself" if joining else _who(number),
        "at": what,
        "looking_for": still(f"the one thing watchers look for in lesson {number}"),
        "end_points": list(_END_POINTS) if last else [_END_POINTS[(number - 1) % len(_END_POINTS)]],
        "questions": questions,
        "next": {
            "seen": "next unit, let pupils choose for themselves how to change a motif",
            "not_yet": "next unit, begin with one motif and one clear change",
        }
        if last
        else {
            "seen": f"dance part {making.letter} once, with no help",
            "not_yet": f"dance only the start of part {making.letter} first, slowly",
        },
    }


def _round_the_steps(making: Making, *, last: bool) -> Fields:
    part = "the dance" if last else making.part
    return {
        "change": {
            "cue": "Raise a hand for stop as well.",
            "partners": "Stand beside someone who counts.",
            "room": "Small hall: dance in two halves.",
            "task": f"Let arms and back dance {part}.",
            "things": "Let a scarf show the moves.",
        },
        "if": {
            "stuck": "Say the moves in order.",
            "finished": "Try a new shape at the end.",
            "loud": "Whisper the counts.",
            "silly": "Ask for stillness alone.",
            "will_not_join": "Offer to count aloud with you.",
            "short_of_time": "Run once, then show." if last else "Leave out exploring.",
            "sound_fails": "Clap the beat.",
            "lesson_lost": "Show next time, after two runs."
            if last
            else f"Dance {part} with hands, in seats.",
        },
        "not_dancing": f"Drums the beat for {part}, then says what was clear.",
    }
