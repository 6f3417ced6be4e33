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


def options_in_words(choice: Choice) -> str:
    """The options in a row, as a sentence."""
    return sentence(_row(choice))


def _row(choice: Choice) -> str:
    return told_apart(choice.options, "or")


def chosen_in_step(dance: Dance, step: Step) -> tuple[str, ...]:
    """Each choice that a step settles, with all there is to choose from.

    A teacher read "choose your shape" on the lesson, and the shapes stood on another page.
    """
    return tuple(
        " ".join(
            (
                _(
                    "{what}: {options}",
                    what=choice.what.strip().removesuffix("."),
                    options=stopped(_row(choice)),
                ),
                _("Decided by {who}.", who=_(DECIDED_BY[choice.by])),
                _("If they have not decided: {what}", what=sentence(choice.if_not)),
            )
        )
        for choice in (dance.choices[name] for name in step.settles)
    )
