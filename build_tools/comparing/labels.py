"""What each field of a unit is called in a sentence about a change, and how much it weighs.

A path is written with dots; `[]` stands for any place in a list, `*` for any name.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from build_tools.comparing.change import Weight
from build_tools.schema_check.descriptions import description_at
from build_tools.schema_check.wording import lower_first

R, W, T, D = Weight.RECORD, Weight.WORDING, Weight.TEACHING, Weight.DANCE
Label = tuple[str, Weight]
_SENTENCE_END = ". "


@dataclass(frozen=True, slots=True)
class Labels:
    """What the fields of one kind of file are called, by their paths."""

    kind: str
    known: Mapping[str, Label]

    def of(self, path: str) -> Label:
        """The label of the field at `path`; of a field that is new, what its schema says of it."""
        return self.known.get(path) or (_from_schema(self.kind, path), Weight.TEACHING)


def _from_schema(kind: str, path: str) -> str:
    name = path.replace("[]", "").rpartition(".")[2]
    first, _, _ = description_at(kind, path).partition(_SENTENCE_END)
    return f"`{name}` ({lower_first(first)})" if first else f"`{name}`"


_UNIT: dict[str, Label] = {
    "format": ("the format of the files", T),
    "title": ("the title", W),
    "publisher": ("the publisher", W),
    "licence": ("the licence", D),
    "language": ("the language", D),
    "credit": ("the credit", W),
    "adapted_from": ("what the unit was adapted from", D),
    "read_by[].role": ("who read it", R),
    "read_by[].day": ("the day it was read", R),
    "read_by[].edition": ("the edition that was read", R),
    "read_by[].for": ("what it was read for", R),
    "read_by[].found": ("what was found", R),
    "draft": ("whether it is a draft", W),
    "years": ("the school years", D),
    "topics": ("the topics", T),
    "subjects": ("the subjects", T),
    "summary": ("the summary", W),
    "stimulus.kinds": ("how pupils meet it", T),
    "stimulus.what": ("what it is", W),
    "stimulus.show": ("how to show it", W),
    "stimulus.where": ("where to show it", W),
    "stimulus.minutes": ("the minutes", T),
    "stimulus.look_for": ("what to look for", W),
    "stimulus.content_note": ("the content note", T),
    "stimulus.items[].title": ("the title", W),
    "stimulus.items[].by": ("who made it", W),
    "stimulus.items[].licence": ("the licence", D),
    "stimulus.items[].source": ("the source", W),
    "stimulus.items[].changes": ("what was changed in it", W),
    "stimulus.items[].file": ("the file", T),
    "stimulus.items[].text_version": ("the text version", W),
    "stimulus.items[].shared": ("the shared picture", T),
    "end_points.*.every_pupil": ("what every pupil does", T),
    "end_points.*.looks_like": ("what it looks like", W),
    "end_points.*.getting_there": ("getting there", W),
    "end_points.*.going_further": ("going further", W),
    "skills[].skill": ("the skill", T),
    "skills[].catch_up": ("how to catch up", W),
    "dance.form": ("the form", D),
    "dance.order": ("who decides the order", D),
    "dance.tempo": ("the tempo in beats a minute", D),
    "dance.phrase": ("the counts in a phrase", D),
    "dance.front": ("the front", T),
    "dance.sides": ("the names of the sides", T),
    "dance.sound": ("the sound", T),
    "sections.*.returns": ("the section that it returns", D),
    "sections.*.idea": ("the idea", W),
    "sections.*.counts": ("the counts", D),
    "sections.*.timed": ("the time it takes", D),
    "sections.*.improvised": ("how it is improvised", D),
    "sections.*.start": ("how dancers stand at the start", D),
    "sections.*.end": ("how dancers stand at the end", D),
    "sections.*.danced": ("what is danced", D),
    "sections.*.sound": ("the sound", T),
    "sections.*.name": ("the name", W),
    "sections.*.groups": ("the groups and their parts", D),
    "sections.*.heard": ("what is heard", T),
    "motifs.*.from": ("who makes it", D),
    "motifs.*.idea": ("the idea", W),
    "motifs.*.actions": ("the actions", D),
    "transitions[].as": ("the kind", D),
    "transitions[].counts": ("the counts", D),
    "transitions[].how": ("how it goes", W),
    "transitions[].cue": ("the cue", T),
    "transitions[].heard": ("what is heard", T),
    "choices.*.what": ("what is chosen", T),
    "choices.*.from": ("what pupils choose from", T),
    "choices.*.by": ("who chooses", T),
    "choices.*.if_not": ("what is danced if nothing is chosen", W),
    "ending[].does": ("what is done", D),
    "curriculum[].met_by": ("how it is met", W),
    "builds_on": ("what it builds on", T),
    "leads_to": ("what it leads to", W),
    "kit.wear": ("what to wear", T),
    "kit.collect": ("what to collect", T),
    "kit.without_props": ("how to do without props", W),
    "safety": ("what to check in every lesson", T),
    "space.hall": ("the hall", W),
    "space.half_hall": ("half a hall", W),
    "space.classroom": ("the classroom", W),
    "space.drawn_for": ("for whom plans are drawn", T),
    "space.who_sits_does": ("what those do who sit", W),
    "space.who_sits_where": ("where those sit who wait", W),
    "tried.taught": ("whether it has been taught", W),
    "tried.with": ("with whom it was tried", W),
    "tried.where": ("where it was tried", W),
    "tried.changed": ("what was changed after trying it", W),
}

_LESSON: dict[str, Label] = {
    "title": ("the title", W),
    "focus": ("the focus", W),
    "pupils_make": ("what pupils make", W),
    "minutes": ("the minutes", T),
    "collect": ("what to get", T),
    "classroom_first": ("what to do in the classroom first", T),
    "story_so_far": ("the story so far", W),
    "never_did_last": ("where to start without the last lesson", W),
    "pictures[].title": ("the title", W),
    "pictures[].by": ("who made it", W),
    "pictures[].licence": ("the licence", D),
    "pictures[].source": ("the source", W),
    "pictures[].changes": ("what was changed in it", W),
    "pictures[].file": ("the file", T),
    "pictures[].text_version": ("the text version", W),
    "pictures[].shared": ("the shared picture", T),
    "steps[].phase": ("the kind of step", T),
    "steps[].does": ("what pupils do", W),
    "steps[].minutes": ("the minutes", T),
    "steps[].least": ("the least minutes", T),
    "steps[].can_wait": ("whether it can wait", T),
    "steps[].grouping": ("the grouping", T),
    "steps[].into": ("what you say to group them", W),
    "steps[].say": ("what you say", W),
    "steps[].task": ("the task", W),
    "steps[].you": ("what you do", W),
    "steps[].place": ("where they stand", W),
    "steps[].facing": ("which way they face", W),
    "steps[].ask": ("the questions", T),
    "steps[].look_for": ("what to look for", W),
    "steps[].easier": ("the easier way", W),
    "steps[].harder": ("the harder way", W),
    "steps[].counts": ("the counts", T),
    "steps[].intensity": ("how hard bodies work", T),
    "steps[].makes": ("what is made", T),
    "steps[].develops": ("what is developed", T),
    "steps[].joins": ("what is joined", T),
    "steps[].dances": ("what is danced again", T),
    "steps[].shows": ("what is shown", T),
    "steps[].settles": ("what pupils settle", T),
    "steps[].teaches": ("the words taught", T),
    "look_and_talk.who": ("who looks", T),
    "look_and_talk.at": ("what they look at", W),
    "look_and_talk.looking_for": ("what they look for", W),
    "look_and_talk.end_points": ("the end points looked for", T),
    "look_and_talk.questions": ("the questions", T),
    "look_and_talk.next.seen": ("where to start if it was seen", T),
    "look_and_talk.next.not_yet": ("where to start if it was not seen yet", T),
    "change.room": ("how to change the room", W),
    "change.task": ("how to change the task", W),
    "change.things": ("how to change the things", W),
    "change.partners": ("how to change the partners", W),
    "change.cue": ("how to change the cue", W),
    "if.stuck": ("the line for when they are stuck", W),
    "if.finished": ("the line for when some finish early", W),
    "if.loud": ("the line for when it gets loud", W),
    "if.silly": ("the line for when it gets silly", W),
    "if.will_not_join": ("the line for when one won’t join in", W),
    "if.short_of_time": ("the line for when time is short", W),
    "if.sound_fails": ("the line for when the sound fails", W),
    "if.lesson_lost": ("the line for when the lesson is lost", W),
    "not_dancing": ("the part for who cannot dance today", W),
    "safety": ("what to check for safety", T),
}

UNIT = Labels("unit", _UNIT)
LESSON = Labels("lesson", _LESSON)
