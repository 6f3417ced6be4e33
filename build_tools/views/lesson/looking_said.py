"""Who looks at whom, and what they look at; where the showing is over, whom they talk about."""

from __future__ import annotations

from build_tools.model.lesson import Lesson, LookAndTalk
from build_tools.page_words.words import N_, _

LOOKERS = {
    "yourself": N_("Each pupil looks back at their own dance"),
    "partner": N_("Partners look at each other"),
    "another pair": N_("Pairs look at another pair"),
    "another group": N_("Groups look at another group"),
    "half the class": N_("Half the class looks at the other half"),
    "whole class": N_("The whole class looks"),
}
LOOKED = {
    "partner": N_("Partners watched each other"),
    "another pair": N_("Pairs watched another pair"),
    "another group": N_("Groups watched another group"),
    "half the class": N_("Half the class watched the other half"),
    "whole class": N_("The whole class watched"),
}
"""The same where they only talk now of what a step before showed."""


def looking_said(lesson: Lesson, talk: LookAndTalk) -> str:
    """Who looks at whom, and at what; who watched whom, where the step for talk comes after."""
    if talk.who in LOOKED and talks_of_what_was_shown(lesson):
        return _("{who}. They talk about {at}.", who=_(LOOKED[talk.who]), at=talk.at)
    return _("{who}. They look at {at}.", who=_(LOOKERS[talk.who]), at=talk.at)


def talks_of_what_was_shown(lesson: Lesson) -> bool:
    """Whether the step for looking and talking shows nothing, and one before it does."""
    last = max((n for n, one in enumerate(lesson.steps) if one.phase == "look and talk"), default=0)
    return not lesson.steps[last].shows and any(one.shows for one in lesson.steps[:last])
