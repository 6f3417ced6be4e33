"""From a lesson's document to a lesson."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from build_tools.model.build_dance import counts, whole
from build_tools.model.build_work import build_works
from build_tools.model.known_fields import known, texts
from build_tools.model.lesson import Lesson, LookAndTalk, Next, Question, Step
from build_tools.model.same_words import same_words
from build_tools.source.front_matter import Document

Data = Mapping[str, Any]


def build_lesson(
    document: Document, kit: Sequence[str] = (), standing: Sequence[str] = ()
) -> Lesson:
    """The lesson written in `document`.

    `kit` is what the unit collects: what a lesson gets ready that does not say it. `standing` is
    what the unit says for the safety of every lesson; what the lesson says too is there once.
    """
    data: Data = document.data
    talk = data.get("look_and_talk")
    own = tuple(data.get("safety", []))
    said = {same_words(line) for line in own}
    others = [line for line in standing if same_words(line) not in said]
    return Lesson(
        file=document.file,
        number=int(data["lesson"]),
        title=data["title"],
        focus=data["focus"],
        pupils_make=data["pupils_make"],
        minutes=int(data["minutes"]),
        collect=tuple(data.get("collect", kit)),
        classroom_first=tuple(data.get("classroom_first", [])),
        story_so_far=data.get("story_so_far"),
        never_did_last=data.get("never_did_last"),
        pictures=build_works(data.get("pictures", [])),
        steps=tuple(_step(s) for s in data["steps"]),
        look_and_talk=_look_and_talk(talk) if talk else None,
        change=texts(data.get("change", {})),
        trouble=texts(data["if"]),
        not_dancing=data["not_dancing"],
        safety=(*own, *others),
        standing=len(others),
        words=dict(data.get("words", {})),
        notes=document.body,
    )


def _step(data: Data) -> Step:
    minutes = int(data["minutes"])
    return Step(
        phase=data["phase"],
        does=data["does"],
        minutes=minutes,
        # a step that says no least time is not meant to be squeezed
        least=int(data.get("least", minutes)),
        grouping=data["grouping"],
        into=data.get("into"),
        say=data.get("say"),
        task=data["task"],
        place=data.get("place"),
        facing=data.get("facing"),
        you=data.get("you"),
        ask=_questions(data.get("ask", [])),
        look_for=data.get("look_for"),
        easier=data.get("easier"),
        harder=data.get("harder"),
        counts=counts(data["counts"]) if "counts" in data else None,
        intensity=data.get("intensity"),
        makes=tuple(data.get("makes", [])),
        develops=tuple(data.get("develops", [])),
        joins=tuple(data.get("joins", [])),
        dances=tuple(data.get("dances", [])),
        shows=tuple(data.get("shows", [])),
        settles=tuple(data.get("settles", [])),
        teaches=tuple(data.get("teaches", [])),
        can_wait=data.get("can_wait", False),
    )


def _questions(data: list[Data]) -> tuple[Question, ...]:
    return tuple(
        Question(q["question"], tuple(q.get("answers", [])), whole(q.get("looks_back_to")))
        for q in data
    )


def _look_and_talk(data: Data) -> LookAndTalk:
    return LookAndTalk(
        who=data["who"],
        at=data["at"],
        looking_for=data["looking_for"],
        end_points=tuple(data.get("end_points", [])),
        questions=_questions(data["questions"]),
        next=Next(**known(Next, data["next"])) if "next" in data else None,
    )
