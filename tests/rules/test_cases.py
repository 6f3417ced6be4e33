"""Each rule finds exactly what its cases expect, at those fields, and nothing else.

A case is an edit of `base`; see `cases.py` for how it is written.
"""

from __future__ import annotations

import re
from itertools import groupby

import pytest

from build_tools.problem import FieldPath
from build_tools.rules.rule import Finding, Rule
from tests.rules.cases import Case, all_cases
from tests.rules.contents import NOTES, Contents, findings, laid_over_base, signed, with_needs
from tests.rules.edits import CaseMistake, is_there, path_in

BY_RULE = {rule: list(cases) for rule, cases in groupby(all_cases(), key=lambda case: case.rule)}
BANNED = re.compile(
    r"\b(invalid|illegal|must|object|property|properties|array|instance|oneOf|you forgot|"
    r"forgot|wrong|fail(s|ed)?|None|null|True|False)\b"
)


def tried(case: Case) -> tuple[Contents, list[tuple[Rule, Finding]]]:
    """The edited base, and what the rule and those it needs find there."""
    contents = laid_over_base(case)
    return contents, findings(contents, with_needs(case.rule))


def place(contents: Contents, file: str, at: str) -> tuple[str, FieldPath]:
    """A place that a case expects: a field that is there after the edits, or the whole file."""
    if file not in contents.documents:
        raise CaseMistake(f"expect: there is no file {file}")
    data = contents.documents[file].data
    if at.startswith(f"{NOTES}/"):
        return file, (NOTES, int(at.removeprefix(f"{NOTES}/")))
    path = path_in(data, at)
    if not is_there(data, path):
        raise CaseMistake(f"expect: {file} has no field at {at}; name the field around it")
    return file, path


@pytest.mark.parametrize("rule", BY_RULE)
def test_finds_what_each_case_expects_and_tells_it(rule: str) -> None:
    """All cases of a rule together, since most take less time than a test of their own."""
    for case in BY_RULE[rule]:
        contents, found = tried(case)
        is_what_the_case_expects(case, contents, found)
        if case.bad:
            is_said_in_the_house_style(case, found)
            is_on_the_line_of_its_field(case, contents, found)


def is_what_the_case_expects(
    case: Case, contents: Contents, found: list[tuple[Rule, Finding]]
) -> None:
    wanted = "a bad case expects a finding, a good case none"
    assert bool(case.expect) == case.bad, f"{case}: {wanted}"
    broken = {rule.name for rule, _ in found} - {case.rule}
    assert not broken, f"{case}: rules that it needs say something: it was not run"
    places = [(finding.file, finding.path) for _, finding in found]
    expected = [place(contents, file, at) for file, at in case.expect]
    assert sorted(places, key=repr) == sorted(expected, key=repr), str(case)


def is_said_in_the_house_style(case: Case, found: list[tuple[Rule, Finding]]) -> None:
    for _, finding in found:
        for text in (finding.message, finding.help):
            assert re.match(r"[a-z0-9`]", text), text
            assert not text.endswith("."), text
            assert not BANNED.search(text), text
            assert "  " not in text, text
            assert not re.search(r"[(\[]'", text), f"a list as the software writes it: {text}"
        assert re.search(r"`[^`]+`|[0-9]|section [A-Z]", finding.message), (str(case), finding)


def is_on_the_line_of_its_field(
    case: Case, contents: Contents, found: list[tuple[Rule, Finding]]
) -> None:
    for (_, finding), problem in zip(found, signed(contents, found), strict=True):
        document = contents.documents[finding.file]
        if finding.path[:1] == (NOTES,):
            assert problem.line == document.body_line + int(finding.path[1])
            assert document.body.split("\n")[int(finding.path[1])]
            continue
        lines = document.yaml_text.split("\n")
        line = lines[problem.line - document.first_line][problem.column - 1 :]
        name = finding.path[-1] if finding.path else ""
        # an item of a list starts where its own text or first field does
        assert isinstance(name, int) or line.lstrip('"').startswith(name), (str(case), line)
