"""What pupils decide, in words: what of, by whom, and what is done if they have not."""

from __future__ import annotations

from build_tools.model.dance import Choice, Dance
from build_tools.model.lesson import Step
from build_tools.page_words.words import N_, _
from build_tools.views.words.plain_words import told_apart
from build_tools.views.words.punctuation import sentence, stopped

DECIDED_BY = {
    "class": N_("the class"),
    "groups": N_("groups"),
    "pairs": N_("pairs"),
    "each pupil": N_("each pupil"),
}
_CHOOSES = {
    "class": N_("The class chooses: {options}"),
    "groups": N_("Each group chooses: {options}"),
    "pairs": N_("Each pair chooses: {options}"),
    "each pupil": N_("Each pupil chooses: {options}"),
}


def options_in_words(choice: Choice) -> str:
    """The options in a row, as a sentence."""
    return sentence(_row(choice))


def _row(choice: Choice) -> str:
    return told_apart(choice.options, "or")


def chosen_in_step(dance: Dance, step: Step) -> tuple[str, ...]:
    """Each choice that a step settles, with all there is to choose from.

    A teacher read "choose your shape" on the lesson, and the shapes stood on another page; and
    what of, by whom and from what "in one breath".
    """
    return tuple(
        " ".join(
            (
                *(sentence(part) for part in choice.what.strip().removesuffix(".").split("; ")),
                _(_CHOOSES[choice.by], options=stopped(_row(choice))),
                _("If they have not decided: {what}", what=sentence(choice.if_not)),
            )
        )
        for choice in (dance.choices[name] for name in step.settles)
    )
