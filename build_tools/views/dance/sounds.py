"""The sounds of a dance, each once, with its place in the unit's document."""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.dance import Dance, Sound
from build_tools.problem import FieldPath


def sounds(dance: Dance) -> Iterator[tuple[FieldPath, Sound, str]]:
    """The place of each sound, the sound, and what it is for: the dance, or section B."""
    yield ("dance", "sound"), dance.sound, "the dance"
    for letter, section in dance.sections.items():
        if section.sound is not dance.sound:
            yield ("sections", letter, "sound"), section.sound, f"section {letter}"
