"""The rules page, from what each rule says of itself."""

from __future__ import annotations

import inspect
import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from markupsafe import Markup

from build_tools.model.bank import Bank
from build_tools.pages.frame.frame import Frame, frame
from build_tools.pages.page import Page
from build_tools.pages.pieces.labelled import Labelled
from build_tools.pages.pieces.notes import notes_html
from build_tools.rules.catalogue import all_rules
from build_tools.views.words.punctuation import capital, sentence

PATH = "rules.html"
_GRADES = (
    Labelled("error", "It cannot be danced, taught or kept safe as written."),
    Labelled("question", "An adviser would ask about it."),
    Labelled("note", "Worth knowing; no answer is needed."),
)


@dataclass(frozen=True, slots=True)
class RuleEntry:
    """One rule as the rules page shows it."""

    name: str
    """The rule's name, which says the fault."""
    family: str
    """The family of rules it belongs to."""
    grade: str
    """Its usual grade: error, question or note."""
    manual: str
    """What it says and why, as Markdown; the first line says it all."""
    source: str
    """The published source it rests on, or that there is none."""


def rule_entries() -> tuple[RuleEntry, ...]:
    """Every rule as the rules page shows it."""
    return tuple(
        RuleEntry(rule.name, rule.family, rule.grade, rule.manual, rule.source)
        for rule in sorted(all_rules(), key=lambda r: (r.family, r.name))
    )


@dataclass(frozen=True, slots=True)
class RuleView:
    """One rule."""

    name: str
    """Its name, which says the fault."""
    grade: str
    """Its grade in this bank."""
    says: str
    """What holds in a good unit."""
    why: Markup
    """Why a teacher cares."""
    source: str
    """Where it comes from."""


@dataclass(frozen=True, slots=True)
class FamilyView:
    """Rules that belong together."""

    name: str
    """The family's name."""
    anchor: str
    """Its name in links."""
    rules: tuple[RuleView, ...]
    """In the order of their names."""


@dataclass(frozen=True, slots=True)
class RulesView:
    """The rules page."""

    frame: Frame
    """What stands around the content."""
    grades: tuple[Labelled, ...]
    """What each grade means."""
    families: tuple[FamilyView, ...]
    """The rules in their families."""


def rules_page(bank: Bank, rules: Sequence[RuleEntry]) -> Page:
    """The page rules.html."""
    families = dict.fromkeys(rule.family for rule in rules)
    view = RulesView(
        frame=frame(bank, PATH, "The rules", "What the bank checks in every unit, and why."),
        grades=_GRADES,
        families=tuple(
            FamilyView(
                capital(family.replace("_", " ")),
                f"family-{family.replace('_', '-')}",
                tuple(_rule(bank, rule) for rule in _of(rules, family)),
            )
            for family in families
        ),
    )
    return Page(PATH, "rules/rules.html", view.frame.title, view)


def _of(rules: Iterable[RuleEntry], family: str) -> list[RuleEntry]:
    return [rule for rule in rules if rule.family == family]


def _rule(bank: Bank, rule: RuleEntry) -> RuleView:
    says, _, why = inspect.cleandoc(rule.manual).partition("\n\n")
    return RuleView(
        name=rule.name,
        grade=bank.grades.get(rule.name, rule.grade),
        says=" ".join(says.split()),
        why=notes_html(_with_examples(why), 4),
        source=sentence(rule.source),
    )


def _with_examples(manual: str) -> str:
    """The manual as Markdown: the lines Bad: and Good: stand apart from their examples."""
    return re.sub(r"^(Bad|Good):$", r"\n\1:\n", manual, flags=re.MULTILINE)
