"""The text of a unit.md of format 1 as one of format 2, with every other letter as it was."""

from __future__ import annotations

import re
from collections.abc import Generator, Iterator, Sequence
from dataclasses import dataclass, field
from typing import Any

from build_tools.movement.canon_and_unison import CHANGE_OVER
from build_tools.upgrading.parts_in_words import SaidParts, counted_out, places, said_parts
from build_tools.upgrading.written_yaml import Part, TextEdit, with_edits
from build_tools.views.words.plain_words import listed

FORMAT = 2
_FIELDS = re.compile(r"\A---[ \t]*\r?\n(.*?)^---[ \t]*\r?$", re.DOTALL | re.MULTILINE)
_TWO_PARTS = (*CHANGE_OVER, "canon in turn")


@dataclass(slots=True)
class Upgrade:
    """What became of a text, in lines that can be read; `left` names what its author decides."""

    text: str
    done: list[str] = field(default_factory=list)
    left: list[str] = field(default_factory=list)


def upgraded(text: str) -> Upgrade:
    """The text of a unit.md in format 2; the same text where it is in format 2 already.

    The text is sound in format 1. Raises ValueError for one without fields.
    """
    found = _FIELDS.search(text)
    if found is None:
        raise ValueError("no fields between lines of three hyphens")
    made = upgraded_fields(found.group(1))
    made.text = text[: found.start(1)] + made.text + text[found.end(1) :]
    return made


def upgraded_fields(fields: str) -> Upgrade:
    """The same for the fields alone, which may be those of bank.yml too."""
    made, whole = Upgrade(fields), Part.whole(fields)
    said = whole.field("format")
    if said is None or said.value == str(FORMAT):
        return made
    edits = [TextEdit(said.start, said.end, str(FORMAT))]
    made.done.append(f"`format: {FORMAT}` is written")
    sections = whole.field("sections")
    for letter, _, section in sections.fields() if sections else ():
        edits += _Section(letter, section, made).edits()
    made.text = with_edits(fields, edits)
    return made


class _Section:
    """One section: its lines of `danced`, which may become fewer, and who dances them."""

    def __init__(self, letter: str, section: Part, made: Upgrade) -> None:
        self._letter, self._section, self._made = letter, section, made
        danced = section.field("danced")
        self._danced = danced
        self._lines = danced.items() if danced else []
        self._said = [said_parts(line.text_of("who")) for line in self._lines]

    def edits(self) -> Iterator[TextEdit]:
        """Every edit of the section."""
        if self._danced is None:
            return
        merged = yield from self._merges(self._danced)
        size = self._size()
        named: list[str] = []
        for n, line in enumerate(self._lines):
            said = None if n - 1 in merged else self._said[n]
            if said is None or line.field("roles") or line.text_of("as") not in _TWO_PARTS:
                continue
            roles = f"roles: [{', '.join(said.roles)}]"
            if said.swaps and n not in merged:
                self._leave(n, "says that they swap: write `swap: true` if it is danced again so")
            if size is None:
                why = f"names {listed(said.roles)}: write `{roles}`, and in `groups` how many dance"
                self._leave(n, f"{why} together and which places are which")
                continue
            named += said.roles
            yield line.put_behind("as", roles)
        if size is not None:
            yield self._section.put_before("danced", _groups(tuple(dict.fromkeys(named)), size))
            self._did(f"`groups` of {size} are written")
        for n, line in enumerate(self._lines):
            self._name_unread(n, line)

    def _merges(self, danced: Part) -> Generator[TextEdit, None, list[int]]:
        """Two lines that are one with its parts changed over; gives the numbers of the first."""
        merged: list[int] = []
        for n in range(len(self._lines) - 1):
            if n - 1 in merged or not self._changed_over(n):
                continue
            gone = danced.take_out(n + 1)
            if danced.holds_a_comment(gone):
                self._leave(n, "and the line after it are one with `swap: true`, but a comment "
                            "stands there")  # fmt: skip
                continue
            merged.append(n)
            yield gone
            yield self._lines[n].put_behind("as", "swap: true")
            self._did(f"lines {n + 1} and {n + 2} of `danced` are one with `swap: true`")
        return merged

    def _changed_over(self, n: int) -> bool:
        """Whether the line after the one numbered `n` is the same with its two parts swapped."""
        one, two = (dict(self._lines[at].data()) for at in (n, n + 1))
        whose = one.pop("who", None), two.pop("who", None)
        what = one.pop("what"), two.pop("what")
        if one != two or one.get("as") not in CHANGE_OVER or len(what[0]) != 2 or "swap" in one:
            return False
        return _swapped(what, whose, (self._said[n], self._said[n + 1]))

    def _size(self) -> int | None:
        """How many dance together, where every line that tells it tells the same."""
        if self._section.field("groups") is not None or not self._are_two_parts():
            return None
        found: set[int | None] = set()
        for line, said in zip(self._lines, self._said, strict=True):
            many = counted_out(line.text_of("who"))
            if many is not None and line.text_of("parts") == str(many):
                found.add(many)
            if said is not None and set(said.roles) == {"ones", "twos"}:
                found.add(2 if said.partners or self._is_in_pairs() else None)
        return found.pop() if len(found) == 1 else None

    def _are_two_parts(self) -> bool:
        """Whether each line that names two roles has two things to share out, or one in turn."""
        return all(
            len(line.data()["what"]) == 2
            for line, said in zip(self._lines, self._said, strict=True)
            if said is not None and line.text_of("as") in CHANGE_OVER
        )

    def _is_in_pairs(self) -> bool:
        start = self._section.field("start")
        return start is not None and start.text_of("formation") == "pairs"

    def _name_unread(self, n: int, line: Part) -> None:
        """Leave to the author words on parts that may mean several things."""
        who, many = line.text_of("who"), line.text_of("parts")
        if (
            line.field("roles") is None
            and self._said[n] is None
            and who
            and many not in (None, "1")
            and counted_out(who) is None
        ):
            self._leave(n, f"says who dances its {many} parts in words (`{who}`): write `roles`")

    def _did(self, what: str) -> None:
        self._made.done.append(f"section {self._letter}: {what}")

    def _leave(self, n: int, why: str) -> None:
        self._made.left.append(f"section {self._letter}, line {n + 1} of `danced`, {why}")


def _swapped(
    what: tuple[Sequence[Any], Sequence[Any]],
    whose: tuple[str | None, str | None],
    said: tuple[SaidParts | None, SaidParts | None],
) -> bool:
    turned = list(what[0]) == list(what[1])[::-1]
    one, two = said
    if one is not None and two is not None:
        same_parts = one.roles == two.roles
        return turned if same_parts else (what[0] == what[1] and one.roles == two.roles[::-1])
    # with no words on parts, or the same, the first part is the first part both times
    return turned and what[0] != what[1] and whose[0] == whose[1]


def _groups(roles: tuple[str, ...], size: int) -> str:
    if not roles:
        return f"groups: {{size: {size}}}"
    each = ", ".join(
        f"{role}: [{', '.join(map(str, at))}]" for role, at in places(roles, size).items()
    )
    return f"groups: {{size: {size}, roles: {{{each}}}}}"
