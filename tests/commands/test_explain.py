"""`explain`: every name that `check` can print has its words."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from build_tools import cli
from build_tools.rules.allowances import ALLOWANCE_STALE
from build_tools.rules.catalogue import all_rules
from build_tools.schema_check.faults import SHAPE_FAULTS
from build_tools.source.faults import READING_FAULTS
from tests.support.banks import ROOT

RULES = [rule.name for rule in all_rules()]
PLAIN = [*READING_FAULTS, *SHAPE_FAULTS, *ALLOWANCE_STALE]


def run(capsys: pytest.CaptureFixture[str], *arguments: str) -> tuple[int, str, str]:
    return (cli.main(["explain", *arguments]), *capsys.readouterr())


def test_every_rule(capsys: pytest.CaptureFixture[str]) -> None:
    for rule in all_rules():
        code, out, err = run(capsys, rule.name)
        assert (code, err) == (0, "")
        first = rule.manual.strip().splitlines()[0]
        assert out.startswith(f"{rule.name} ({rule.grade})\n\n{first}\n")
        assert out.rstrip().endswith(f"Source: {rule.source}")
        assert ("Where … stands in an example" in out) == ("…" in rule.manual), rule.name


@pytest.mark.parametrize("name", PLAIN)
def test_a_fault_found_before_any_rule(name: str, capsys: pytest.CaptureFixture[str]) -> None:
    code, out, err = run(capsys, name)
    assert (code, err) == (0, "")
    assert out.startswith(f"{name} (error)\n\n")
    assert len(out) > len(name) + 30


def test_without_a_name_all_are_listed(capsys: pytest.CaptureFixture[str]) -> None:
    code, out, err = run(capsys)
    assert (code, err) == (0, "")
    names = out.splitlines()[0::2]
    assert names == sorted({*RULES, *PLAIN})
    for line in out.splitlines()[1::2]:
        assert re.match(r"    [A-Z].*\.$", line), line


@pytest.mark.parametrize(
    ("name", "near"),
    [("minutes-do-not-ad-up", "minutes-do-not-add-up"), ("unknown-feild", "unknown-field")],
)
def test_a_near_name(name: str, near: str, capsys: pytest.CaptureFixture[str]) -> None:
    code, out, err = run(capsys, name)
    assert (code, out) == (2, "")
    assert err == f'there is no rule {name}; did you mean "{near}"?\n'


def test_a_name_far_from_all(capsys: pytest.CaptureFixture[str]) -> None:
    code, out, err = run(capsys, "xyzzy")
    assert (code, out) == (2, "")
    assert err == "there is no rule xyzzy; `explain` alone lists them all\n"


def test_every_name_the_reader_and_the_schema_check_sign_with_is_explained() -> None:
    signed = set()
    for room in ("source", "schema_check", "rules"):
        for module in (ROOT / "build_tools" / room).glob("*.py"):
            signed |= names_in(module)
    assert {"broken-yaml", "missing-field", "raw-html", "file-missing"} <= signed
    assert signed <= {*PLAIN}


def names_in(module: Path) -> set[str]:
    """The names in quotation marks that a module gives to problems."""
    text = module.read_text(encoding="utf-8")
    return set(re.findall(r'(?:Fault|_fault)\(\s*"([a-z0-9-]+)"', text)) | set(
        re.findall(r'yield (?:path, |\(\*path, name\), )?"([a-z0-9-]+)",', text)
    )
