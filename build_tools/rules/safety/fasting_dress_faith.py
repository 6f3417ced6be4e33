"""What pupils are asked to wear leaves room for faith, modesty and what a family owns.

Covered arms and legs stop nobody dancing. A line that says so spares a pupil from asking. It stands
with the dress that is asked for, or in the kit's `wear` or `without_props`.

Bad:
    wear: Leotard and bare legs
Good:
    wear: School PE kit. Arms and legs may be covered.
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.care import ABOUT_DRESS, dress_is_a_choice, dressed
from build_tools.views.written.unit_text import unit_text

GRADE: Grade = "note"
READS = "en"
SOURCE = "common practice, no source"
_KINDS = frozenset({"wear", "collect", "does", "say", "task", "you", "into", "safety"})


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for the first piece of dress, if nothing says that it is a choice."""
    for found in unit_text(unit).saying(ABOUT_DRESS, _KINDS, meant=False):
        said = dressed(found.field.text, about_wear=found.field.kind == "wear")
        if said is None:
            continue
        near = (found.field.text, unit.kit.wear, unit.kit.without_props)
        if not any(map(dress_is_a_choice, near)):
            yield Finding(
                found.file,
                found.field.path,
                f'`{found.field.kind}` asks for "{said.text}", and nothing says that it is a '
                "choice",
                "add to `wear`: arms, legs and heads may be covered, and no costume is needed",
            )
        return
