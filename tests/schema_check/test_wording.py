"""What an author is told: the fault, the arithmetic, the near word, at the right place, once."""

from __future__ import annotations

import re
from pathlib import Path
from random import Random

import pytest

from build_tools.checking.report_text import as_text
from build_tools.problem import Problem
from build_tools.schema_check.check import MOST_MISFITS, check_document, field_name
from build_tools.schema_check.wording import cut_short, lower_first, nearest
from build_tools.shapes.schemas import Kind
from build_tools.source.front_matter import Document, read_data, read_markdown
from tests.support.banks import CONTENT, UNIT
from tests.support.schema_fuzz import changed, documents

FILES: dict[Kind, str] = {
    "unit": f"units/{UNIT}/unit.md",
    "lesson": f"units/{UNIT}/lesson-1.md",
    "bank": "bank.yml",
    "topics": "vocabulary/topics.yml",
    "words": "vocabulary/words.yml",
    "safety": "safety.md",
}
# Words of the specification's, and words that blame.
UNWANTED = re.compile(
    r"\b(object|array|string|integer|boolean|propert(y|ies)|schema|instance|enum|const|pattern|regex"
    r"|oneOf|anyOf|additionalProperties|required|minLength|None|True|False|dict|invalid|illegal|must"
    r"|you forgot|wrong)\b"
)


def text_of(kind: Kind) -> str:
    return (CONTENT / FILES[kind]).read_text(encoding="utf-8")


def faults(kind: Kind, text: str) -> list[Problem]:
    file = FILES[kind]
    result = (read_data if file.endswith(".yml") else read_markdown)(file, text.encode())
    assert isinstance(result, Document), result
    return check_document(result, kind)


def one_fault(kind: Kind, old: str, new: str) -> tuple[Problem, int]:
    """The only problem after replacing the first `old`, and the line of the replacement."""
    text = text_of(kind)
    assert old in text
    found = faults(kind, text.replace(old, new, 1))
    assert len(found) == 1, found
    assert found[0].file == FILES[kind]
    assert found[0].severity == "error"
    return found[0], text[: text.index(old)].count("\n") + 1


@pytest.mark.parametrize("kind", FILES)
def test_the_real_files_fit(kind: Kind) -> None:
    assert faults(kind, text_of(kind)) == []


CASES: list[tuple[Kind, str, str, int, str, str, str]] = [
    # kind, old, new, lines below the old text's start, rule, message, help
    (
        "lesson",
        "    look_for: ",
        "    looks_for: ",
        0,
        "unknown-field",
        "`looks_for` is not a field that is read here",
        "did you mean `look_for`?",
    ),
    (
        "lesson",
        "\nfocus: ",
        "\nfocsu: ",
        1,
        "unknown-field",
        "`focsu` is not a field that is read here",
        "did you mean `focus`?",
    ),
    (
        "safety",
        "\ntitle:",
        "\nzzz: x\ntitle:",
        1,
        "unknown-field",
        "`zzz` is not a field that is read here",
        "if it goes on with the text above it, set it in further than that; else put what it says "
        "under one of: title",
    ),
    (
        "unit",
        "licence: CC-BY-SA-4.0\nlanguage",
        "language",
        -1,
        "missing-field",
        "`licence` is missing",
        "add it: the licence, by its SPDX id",
    ),
    (
        "lesson",
        "minutes: 45",
        "minutes: long",
        0,
        "wrong-value",
        '`minutes` is "long", but it takes a whole number',
        "write a whole number",
    ),
    (
        "lesson",
        "minutes: 45",
        "minutes: 3:45",
        0,
        "wrong-value",
        '`minutes` is "3:45", but it takes a whole number',
        "write a whole number",
    ),
    (
        "lesson",
        "minutes: 45",
        "minutes:",
        0,
        "wrong-value",
        "`minutes` is empty",
        "write a whole number",
    ),
    (
        "lesson",
        "minutes: 45",
        "minutes: [45]",
        0,
        "wrong-value",
        "`minutes` is a list, but it takes a whole number",
        "write a whole number",
    ),
    (
        "lesson",
        "minutes: 45",
        "minutes: 500",
        0,
        "wrong-value",
        "`minutes` is 500, and 120 is the most",
        "write 120 or less",
    ),
    (
        "lesson",
        "minutes: 45",
        "minutes: 0",
        0,
        "wrong-value",
        "`minutes` is 0, and 1 is the least",
        "write 1 or more",
    ),
    (
        "lesson",
        "phase: warm-up",
        "phase: warming up",
        0,
        "wrong-value",
        '`phase` is "warming up", which is not one of its words',
        'did you mean "warm-up"? The words are: recall, warm-up, explore, make, develop, join, '
        "rehearse, show, look and talk, cool-down",
    ),
    (
        "lesson",
        "intensity: steady",
        "intensity: 7",
        0,
        "wrong-value",
        '`intensity` is "7", which is not one of its words',
        "use one of: gentle, steady, vigorous",
    ),
    (
        "lesson",
        "makes: [wave]",
        "makes: [Wave/Two]",
        0,
        "wrong-value",
        'line 1 of `makes` is "Wave/Two", but it takes a motif or development by its name, a '
        "section by its capital letter, or the word whole",
        "write a motif or development by its name, a section by its capital letter, or the word "
        "whole",
    ),
    (
        "lesson",
        "makes: [wave]",
        "makes: [wave, wave]",
        0,
        "wrong-value",
        '`makes` holds "wave" twice',
        "keep one of the two",
    ),
    (
        "lesson",
        "makes: [wave]",
        "makes: []",
        0,
        "wrong-value",
        "`makes` is empty",
        "write at least 1 line",
    ),
    (
        "lesson",
        "title: The sea lets go",
        "title: ''",
        0,
        "wrong-value",
        "`title` is empty",
        "write at least 3 letters",
    ),
    (
        "lesson",
        "title: The sea lets go",
        "title: '    '",
        0,
        "wrong-value",
        "`title` is empty",
        "write a title",
    ),
    (
        "lesson",
        "title: The sea lets go",
        "title: X",
        0,
        "wrong-value",
        "`title` has 1 letter, and 3 is the least",
        "add to it",
    ),
    (
        "lesson",
        "title: The sea lets go",
        f"title: {'wave ' * 20}",
        0,
        "wrong-value",
        "`title` has 99 letters, and 50 is the most",
        "shorten it",
    ),
    (
        "lesson",
        "counts: 8",
        "counts: a few",
        0,
        "wrong-value",
        '`counts` is "a few", but it takes a number of counts, such as 8, 1/2 or 1 1/2',
        "write a number of counts, such as 8, 1/2 or 1 1/2",
    ),
    (
        "lesson",
        "counts: 8",
        "counts: 2.5",
        0,
        "wrong-value",
        '`counts` is "2.5", but it takes a number of counts, such as 8, 1/2 or 1 1/2',
        "write a number of counts, such as 8, 1/2 or 1 1/2",
    ),
    (
        "unit",
        "format: 2",
        "format: 3",
        0,
        "wrong-value",
        "`format` is 3, which is newer than the 2 this version reads",
        "update the bank's software, or ask for the unit in the older format",
    ),
    (
        "unit",
        "format: 2",
        "format: one",
        0,
        "wrong-value",
        '`format` is "one", which is not one of its words',
        "use one of: 1, 2",
    ),
    (
        "unit",
        "issued: 2026-11-29",
        "issued: 25 November",
        0,
        "wrong-value",
        '`issued` is "25 November", but it takes a day such as 2026-11-20',
        "write a day such as 2026-11-20",
    ),
    (
        "unit",
        "language: en-GB",
        "language: en-UK",
        0,
        "wrong-value",
        '`language` is "en-UK", but it takes a language tag such as en-GB or cy (the tag for '
        "Britain is GB, never UK)",
        "write a language tag such as en-GB or cy (the tag for Britain is GB, never UK)",
    ),
    (
        "unit",
        "\n  waves-together:",
        "\n  Waves & Together:",
        1,
        "wrong-value",
        "the name `Waves & Together` is not a name in small letters, figures and single hyphens, "
        "such as gust-quick",
        "use a name in small letters, figures and single hyphens, such as gust-quick",
    ),
    (
        "unit",
        "\n  waves-together:",
        f"\n  {'waves-' * 9}on:",
        1,
        "wrong-value",
        "the name `waves-waves-waves-waves-waves-waves-wav…` has 56 letters, and 40 is the most",
        "shorten it",
    ),
    (
        "unit",
        "    counts: 32\n",
        "",
        -2,
        "wrong-value",
        "`A` takes exactly one of counts, timed and improvised; none of them is there",
        "write exactly one of counts, timed and improvised",
    ),
    (
        "unit",
        "    counts: 32\n",
        "    counts: 32\n    timed: {seconds: 9, ends_on: x}\n",
        -2,
        "wrong-value",
        "`A` takes exactly one of counts, timed and improvised; 2 are there (`counts`, `timed`)",
        "write exactly one of counts, timed and improvised",
    ),
    (
        "bank",
        "as_of:",
        "grades: {new-rule: high}\nas_of:",
        0,
        "wrong-value",
        '`new-rule` is "high", which is not one of its words',
        "use one of: error, question, note",
    ),
    (
        "topics",
        "\nanimals: {also:",
        "\nanimals: {alos:",
        1,
        "unknown-field",
        "`alos` is not a field that is read here",
        "did you mean `also`?",
    ),
    (
        "words",
        "\nmotif:\n  plain:",
        "\nmotif:\n  palin:",
        2,
        "unknown-field",
        "`palin` is not a field that is read here",
        "did you mean `plain`?",
    ),
]


@pytest.mark.parametrize(
    ("kind", "old", "new", "below", "rule", "message", "help_"),
    CASES,
    ids=[f"{c[0]}: {' '.join(c[2].split())[:30] or 'nothing'}" for c in CASES],
)
def test_one_fault_is_said_once_and_in_its_place(
    kind: Kind, old: str, new: str, below: int, rule: str, message: str, help_: str
) -> None:
    found, line = one_fault(kind, old, new)
    assert (found.rule, found.message, found.help) == (rule, message, help_)
    if below >= 0:
        assert found.line == line + below


def test_a_missing_field_is_placed_at_what_lacks_it() -> None:
    text = text_of("lesson")
    does = next(line for line in text.splitlines() if line.startswith("    does: "))
    (found,) = faults("lesson", text.replace(f"{does}\n", "", 1))
    assert found.message == "`does` is missing"
    assert found.line == text[: text.index("- phase: warm-up")].count("\n") + 1
    (found,) = faults("lesson", text.replace("focus: ", "# focus: ", 1))
    assert (found.message, found.line, found.column) == ("`focus` is missing", 2, 1)


def test_two_faults_are_two_problems_in_order() -> None:
    text = text_of("lesson").replace("minutes: 45", "minutes: 500", 1)
    text = text.replace("phase: cool-down", "phase: cooling", 1).replace("focus:", "# focus:", 1)
    found = faults("lesson", text)
    assert [p.rule for p in found] == ["missing-field", "wrong-value", "wrong-value"]
    assert [p.line for p in found] == sorted(p.line for p in found)


@pytest.mark.parametrize("data", ["", "null", "8", "some text", "[1, 2]", "true"])
@pytest.mark.parametrize("kind", FILES)
def test_a_file_of_something_else_is_one_problem(kind: Kind, data: str) -> None:
    text = data if FILES[kind].endswith(".yml") else f"---\n{data}\n---\n"
    (found,) = faults(kind, text)
    assert found.message.startswith("the file is ")
    assert not UNWANTED.search(found.message)


def test_a_merge_is_an_unknown_field() -> None:
    (found,) = faults("lesson", text_of("lesson").replace("focus:", "<<: {a: b}\nfocus:", 1))
    assert found.message == "`<<` is not a field that is read here"


def test_whatever_is_wrong_is_said_in_plain_words(thorough: bool) -> None:
    choose = Random(7)
    originals = list(documents())
    said = set()
    for number in range(240 if thorough else 120):
        kind, original = originals[number % len(originals)]
        data = changed(original.data, choose)
        for problem in check_document(Document(original.file, data, "", "", 1), kind):
            said.add((problem.message, problem.help))
    assert len(said) > 100
    for message, help_ in said:
        # what the author wrote, and the names of fields, are theirs; the rest is ours
        ours = re.sub(r'`[^`]*`|"[^"]*"|use one of: .*', "", f"{message} | {help_}")
        assert not UNWANTED.search(ours), (message, help_)
        assert message[0] in "`" or message[0].islower(), message
        assert help_[0].islower(), help_
        assert not message.endswith("."), message
        assert not help_.endswith("."), help_
        assert "\n" not in message + help_.partition("; such as\n")[0]


@pytest.mark.parametrize(
    ("word", "known", "near"),
    [
        ("looks_for", ["look_for", "say"], "look_for"),
        ("Canon", ["canon", "unison"], "canon"),
        ("cannon", ["canon", "unison"], "canon"),
        ("zebra", ["canon", "unison"], None),
        ("", ["canon"], None),
        ("CC-BY-SA-4", ["CC-BY-4.0", "CC-BY-SA-4.0"], "CC-BY-SA-4.0"),
    ],
)
def test_near_words(word: str, known: list[str], near: str | None) -> None:
    assert nearest(word, known) == near


def test_values_are_cut_to_a_line() -> None:
    assert cut_short("a\n  b") == "a b"
    assert cut_short("x" * 40) == "x" * 40
    assert cut_short("x" * 41) == "x" * 39 + "…"


def test_a_field_is_named_as_the_author_sees_it() -> None:
    assert field_name(()) == "the file"
    assert field_name(("minutes",)) == "`minutes`"
    assert field_name(("steps", 2, "ask", 0)) == "line 1 of `ask`"
    assert field_name((0,)) == "line 1 of `the list`"


def test_a_description_becomes_the_second_half_of_a_sentence() -> None:
    assert lower_first("What it is for.") == "what it is for"
    assert lower_first("") == ""


def test_paths_are_of_real_files() -> None:
    assert all(Path(CONTENT, file).is_file() for file in FILES.values())


def test_a_file_of_another_sort_is_not_said_a_thousand_times() -> None:
    (first, *others) = faults("lesson", "---\nsteps:\n" + "- {}\n" * 400 + "---\n")
    assert 0 < len(others) < MOST_MISFITS + 20  # a complaint names each field that is missing
    assert first.line == 2
    assert "`steps` has 400 lines, and 10 is the most" in {p.message for p in (first, *others)}


@pytest.mark.parametrize(
    ("kind", "old", "new", "meant"),
    [
        ("unit", "as: canon,", "as: together,", "unison"),
        ("unit", "as: canon,", "as: one after another,", "canon in turn"),
        ("unit", "by: each pupil", "by: each group", "groups"),
        ("unit", "by: groups", "by: groups of 4", "groups"),
        ("lesson", "grouping: pairs", "grouping: partners", "pairs"),
        ("lesson", "grouping: pairs", "grouping: each pair", "pairs"),
        ("lesson", "grouping: whole class", "grouping: everyone", "whole class"),
        ("lesson", "intensity: steady", "intensity: medium", "steady"),
    ],
)
def test_what_teachers_say_is_known_before_what_is_spelt_alike(
    kind: Kind, old: str, new: str, meant: str
) -> None:
    text = next(t for t in _all_texts(kind) if old in t)
    found = faults_in(kind, text.replace(old, new, 1))
    assert [f'did you mean "{meant}"?' in p.help for p in found] == [True], found


def test_a_list_of_fields_is_shown_as_lines_to_copy() -> None:
    """Advice that named no field led to the next error."""
    text = next(t for t in _all_texts("unit") if "\n    heard:\n      - {" in t)
    wrong = re.sub(
        r"\n    heard:\n(?:      - \{.*\n)+", "\n    heard: silence, 4 counts\n", text, count=1
    )
    (found,) = (p for p in faults_in("unit", wrong) if "`heard`" in p.message)
    assert found.help.endswith("such as\nheard:\n  - counts: 4\n    sound: beat")
    line = text.replace("\n    heard:\n      - {", "\n    heard:\n      - silence, 4\n      - {", 1)
    (found,) = faults_in("unit", line)
    assert found.help.endswith("such as\nheard:\n  - counts: 4\n    sound: beat")
    printed = as_text([found], "").splitlines()
    assert printed[-3:] == ["        heard:", "          - counts: 4", "            sound: beat"]


def test_a_field_that_stands_there_already_is_no_advice() -> None:
    text = text_of("unit").replace("\nmotifs:", "\nskill: hop\nmotifs:", 1)
    (found,) = faults("unit", text)
    assert "did you mean `skills`" not in found.help


def _all_texts(kind: Kind) -> list[str]:
    pattern = "unit.md" if kind == "unit" else "lesson-*.md"
    return [p.read_text("utf-8") for p in sorted((CONTENT / "units").glob(f"*/{pattern}"))]


def faults_in(kind: Kind, text: str) -> list[Problem]:
    result = read_markdown(FILES[kind], text.encode())
    assert isinstance(result, Document), result
    return check_document(result, kind)
