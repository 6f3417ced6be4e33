"""Damage that is known to make a file unsound is said in that very file, at a line that exists."""

from __future__ import annotations

import random
import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest

from build_tools.checking.check_bank import BANK_KINDS, check_folder
from build_tools.shapes.schemas import Kind, schema
from build_tools.shapes.shape import shape_of
from build_tools.source.folder import MAY_BE_MISSING
from build_tools.source.front_matter_split import Split, split
from build_tools.source.typed.reader import read_typed
from tests.support.banks import BASE_UNIT, copy_bank, copy_base, line_count
from tests.support.quick_bank import QuickBank
from tests.support.schema_fuzz import kind_of

SEED = 20_261_125
FIELD = re.compile(r"^( *(?:- )?)([a-z_]+):( |$)(.*)$")
MOST_OF_EACH_KIND = 1


@dataclass(frozen=True)
class Damage:
    """One file made unsound: what was done, and the line it was done on."""

    what: str
    text: str
    line: int


def fields(text: str) -> list[tuple[int, str, str, str]]:
    """Every line of a file's fields that starts one: its number from 0, indent, name and value."""
    lines = text.split("\n")
    end = lines.index("---", 1) if lines[0] == "---" else len(lines)
    found = []
    block: int | None = None
    for number, line in enumerate(lines[:end]):
        indent = len(line) - len(line.lstrip())
        if block is not None and (indent > block or not line.strip()):
            continue
        block = None
        if match := FIELD.match(line):
            found.append((number, match.group(1), match.group(2), match.group(4)))
            if match.group(4) in (">-", "|", ">", "|-"):
                block = indent
    return found


def text_lines(kind: Kind, text: str) -> set[int]:
    """The lines on which a text starts, in which whatever is typed is read as text."""
    found = split(text)
    own, first = (found.fields, found.first_line) if isinstance(found, Split) else (text, 1)
    made = read_typed(own, first, shape_of(kind))
    return {line for line, _, _ in made.texts.values()}


def with_line(text: str, number: int, line: str | None) -> str:
    lines = text.split("\n")
    lines[number : number + 1] = [] if line is None else [line]
    return "\n".join(lines)


def damage(kind: Kind, text: str) -> Iterator[Damage]:
    """Many files made from `text`, each unsound for a reason one can point at."""
    needed = set(schema(kind).get("required", []))
    texts = text_lines(kind, text)
    tops = [f for f in fields(text) if not f[1]]
    for number, indent, name, value in fields(text):
        line = text.split("\n")[number]
        at = number + 1
        start = f"{indent}{name}:"
        spaces = " " * len(indent)
        one_line = value and value not in (">-", "|", ">", "|-") and value[0] not in "[{\"'#"
        if at not in texts and (not value or one_line):
            yield Damage("bracket", with_line(text, number, f"{start} [unclosed {value}"), at)
            yield Damage("quote", with_line(text, number, f'{start} "unclosed {value}'), at)
        if not one_line:
            continue
        again = f"{line}\n{spaces}{name}: {value}"
        yield Damage("second name", with_line(text, number, again), at)
        yield Damage("html", with_line(text, number, f"{start} {value} <b>bold</b>"), at)
        yield Damage("escape", with_line(text, number, f'{start} "a\\0b"'), at)
        yield Damage("control", with_line(text, number, f"{start} {value}\x07"), at)
        if at in texts:
            continue  # there every sign is a letter of the text
        yield Damage("anchor", with_line(text, number, f"{start} &a {value}"), at)
        yield Damage("alias", with_line(text, number, f"{start} *a"), at)
        yield Damage("tag", with_line(text, number, f"{start} !!str {value}"), at)
        yield Damage("nan", with_line(text, number, f"{start} .nan"), at)
        yield Damage("monster", with_line(text, number, f"{start} {'9' * 40}"), at)
        yield Damage("two colons", with_line(text, number, f"{start} see: {value}: more"), at)
        yield Damage("empty", with_line(text, number, f"{start} ~"), at)
        yield Damage("list", with_line(text, number, f"{start} [[{name}]]"), at)
        yield Damage("map", with_line(text, number, f"{start} {{zzz: 1}}"), at)
        yield Damage("deep", with_line(text, number, f"{start} {'[' * 40}{']' * 40}"), at)
        if value.isdigit():
            yield Damage("number", with_line(text, number, f"{start} 99999"), at)
            yield Damage("negative", with_line(text, number, f"{start} -1"), at)
            yield Damage("half", with_line(text, number, f"{start} {value}.5"), at)
            yield Damage("time", with_line(text, number, f"{start} 3:45"), at)
    for number, _, name, _ in tops:
        line = text.split("\n")[number]
        if kind in ("unit", "lesson", "bank", "safety"):
            yield Damage(
                "slip", with_line(text, number, line.replace(name, f"{name}x", 1)), number + 1
            )
            if name in needed and not re.match(r"[ -]", text.split("\n")[number + 1]):
                yield Damage("gone", with_line(text, number, None), number + 1)


def some_of_each(found: list[Damage]) -> list[Damage]:
    """A few of every kind of damage, chosen at a fixed seed."""
    kinds: dict[str, list[Damage]] = {}
    for one in found:
        kinds.setdefault(one.what, []).append(one)
    choose = random.Random(SEED)
    return [
        one
        for what in sorted(kinds)
        for one in choose.sample(kinds[what], min(MOST_OF_EACH_KIND, len(kinds[what])))
    ]


def errors_in(quick: QuickBank, file: str, raw: bytes) -> list[int]:
    """The lines of the errors in `file` with `raw` in it; fails if a line does not exist."""
    found = [p for p in quick.problems_with(file, raw) if p.file == file and p.severity == "error"]
    assert all(1 <= p.line <= line_count(raw) for p in found), found
    return [p.line for p in found]


def test_every_kind_of_damage_is_said_in_its_file(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, thorough: bool
) -> None:
    """Of a published unit in the long run; in the usual one of a small one, checked sooner."""
    quick = QuickBank(copy_bank(tmp_path) if thorough else copy_base(tmp_path), monkeypatch)
    tried: dict[str, int] = {}
    on_the_line = 0
    for file, raw in quick.originals.items():
        every = list(damage(kind_of(file), raw.decode("utf-8")))
        for one in every if thorough else some_of_each(every):
            lines = errors_in(quick, file, one.text.encode("utf-8"))
            assert lines, (file, one.what, one.line)
            tried[one.what] = tried.get(one.what, 0) + 1
            on_the_line += one.line in lines
    assert len(tried) >= 20, tried
    assert min(tried.values()) >= 3, tried
    # reading stops a little later in a few cases, and never far away in most
    assert on_the_line > sum(tried.values()) * 0.75


@pytest.mark.parametrize("bad", [b"\xff", b"\xe9t\xe9", b"\x00", b"\xc3", b"\xed\xa0\x80"])
def test_a_bad_byte_anywhere(bad: bytes, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    quick = QuickBank(copy_base(tmp_path), monkeypatch)
    choose = random.Random(SEED)
    for file, raw in quick.originals.items():
        # not inside a letter of several bytes, where it could complete or move it
        starts = [n for n in range(1, len(raw)) if raw[n] < 0x80 and raw[n - 1] < 0x80]
        for at in choose.sample(starts, 5):
            text = raw[:at] + bad + raw[at:]
            assert errors_in(quick, file, text) == [raw[:at].count(b"\n") + 1]


UNIT, ONE, TWO = (f"units/{BASE_UNIT}/{n}.md" for n in ("unit", "lesson-1", "lesson-2"))


@pytest.mark.parametrize(
    ("file", "pattern", "new"),
    [
        (UNIT, r"\nformat: 2\n", "\nformat: 3\n"),
        (UNIT, r"\nedition: .*\n", "\nedition: first\n"),
        (UNIT, r"\nissued: .*\n", "\nissued: 2026-13-01\n"),
        (UNIT, r"\nlicence: .*\n", "\nlicence: all mine\n"),
        (UNIT, r"\nlanguage: .*\n", "\nlanguage: English\n"),
        (UNIT, r"\n  form: .*\n", "\n  form: A Z A\n"),
        (UNIT, r"what: \[drift\]", "what: [driift]"),
        (ONE, r"\nlesson: 1\n", "\nlesson: 2\n"),
        (ONE, r"\nlesson: 1\n", "\nlesson: last\n"),
        (ONE, r"\nminutes: .*\n", "\nminutes: 3\n"),
        (ONE, r"phase: explore", "phase: exploring"),
        (ONE, r"makes: \[drift\]", "makes: [no-such-motif]"),
        (ONE, r"end_points: \[.*?\]", "end_points: [no-such-end-point]"),
        (TWO, r"\nlesson: 2\n", "\nlesson: 0\n"),
        ("vocabulary/words.yml", r"under: \w+", "under: nothing"),
        ("bank.yml", r"\nas_of: .*\n", "\nas_of: today\n"),
        ("safety.md", r"^---\n", "--\n"),
        ("safety.md", r"\n---\n", "\n---\n<b>Bold</b>\n"),
        ("safety.md", r"\n---\n", "\n---\n[x](javascript:y)\n"),
    ],
)
def test_a_wrong_word_or_number_is_an_error_in_its_file(
    file: str, pattern: str, new: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    quick = QuickBank(copy_base(tmp_path), monkeypatch)
    text, times = re.subn(pattern, new, quick.originals[file].decode("utf-8"), count=1)
    assert times == 1
    assert errors_in(quick, file, text.encode("utf-8"))


def test_every_file_of_a_bank_is_needed(tmp_path: Path) -> None:
    bank = copy_base(tmp_path)
    for file in (*sorted(set(BANK_KINDS) - MAY_BE_MISSING), UNIT):
        raw = (bank / file).read_bytes()
        (bank / file).unlink()
        assert (file, "file-missing") in {(p.file, p.rule) for p in check_folder(bank).problems}
        (bank / file).write_bytes(raw)
    assert check_folder(bank).of_grade("error") == ()
