"""What is raised where a dance is written so that nobody can say who dances what when."""

from __future__ import annotations


class NotDanceable(ValueError):  # noqa: N818 - it is about the dance, not about the code
    """The words of a unit leave out, or contradict, what its counts are worked out from.

    A rule of `rules/ground.py` finds the same at its line and says how to mend it; whoever works
    anything out of a unit that they found nothing in never meets this.
    """
