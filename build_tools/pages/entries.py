"""What the rules page and the about page are told from outside."""

from __future__ import annotations

from dataclasses import dataclass


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


@dataclass(frozen=True, slots=True)
class Notice:
    """One part that is bundled or that builds the site."""

    name: str
    """The part's name."""
    version: str
    """Its version."""
    licence: str
    """Its licence."""
    digest: str
    """The digest of exactly what was used."""
    role: str
    """What it is there for."""
