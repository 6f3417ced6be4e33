"""What is wrong with a picture."""

from __future__ import annotations


class PictureError(ValueError):
    """The picture cannot be published; the text says why, and what to do.

    `line` is the line of a drawing where that stands, from 1; None where it is about all of it.
    """

    def __init__(self, why: str, line: int | None = None) -> None:
        super().__init__(why)
        self.why = why
        self.line = line

    def __reduce__(self) -> tuple[type[PictureError], tuple[str, int | None]]:
        return PictureError, (self.why, self.line)
