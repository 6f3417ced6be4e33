"""What strangers wrote reaches a terminal as letters alone (ECMA-48; Unicode Annex 9)."""

from __future__ import annotations

import io
import os
import subprocess
import sys
from pathlib import Path

import pytest

from build_tools import cli
from build_tools.commands.shared.plain_output import plain, plain_output
from tests.support.banks import ROOT
from tests.support.packs import about, empty_bank, pack, with_files, written

STEERING = "\x1b[31m\x07\x08\r\x9b2J\u202e\u2066\u2028\ud800\x7f\u200f"


def test_signs_that_steer_become_question_marks() -> None:
    assert plain(f"a{STEERING}b") == "a?[31m????2J??????b"
    assert plain("two\nlines,\ta tab, é, 王, “quotes”") == "two\nlines,\ta tab, é, 王, “quotes”"


def test_all_that_is_printed_is_plain(capsys: pytest.CaptureFixture[str]) -> None:
    with plain_output():
        print(f"a{STEERING}")
        print("b\x1b", file=sys.stderr)
    said = capsys.readouterr()
    assert "\x1b" not in said.out + said.err
    assert said.err == "b?\n"


def test_letters_that_a_terminal_lacks_do_not_stop_it(monkeypatch: pytest.MonkeyPatch) -> None:
    raw = io.BytesIO()
    monkeypatch.setattr("sys.stdout", io.TextIOWrapper(raw, encoding="ascii", write_through=True))
    with plain_output():
        print("café 王")
    assert raw.getvalue() == b"caf? ?\n"


def test_a_command_goes_on_when_nobody_listens_any_more() -> None:
    """As where `head` has read enough: no traceback, and the command's own exit code."""
    once = "import sys; from build_tools.cli import main; sys.exit(main(['explain']))"
    heard, told = os.pipe()
    os.close(heard)
    done = subprocess.run(
        [sys.executable, "-c", once], stdout=told, stderr=subprocess.PIPE, cwd=ROOT, check=False
    )
    os.close(told)
    assert (done.returncode, done.stderr) == (0, b"")


@pytest.mark.parametrize("command", ["take-in", "compare"])
def test_a_pack_cannot_steer_a_terminal(
    command: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    content = empty_bank(tmp_path / "content")
    odd = about(format="\x1b[2J", unit="\x1b]0;a\x07", edition="\ud800")
    file = written(tmp_path, pack(with_files({"about.json": odd})), "a\x1b[31m.zip")
    more = ["--content", str(content)] if command == "take-in" else [str(file)]
    assert cli.main([command, str(file), *more]) == 1
    said = capsys.readouterr()
    assert "refused" in said.out
    assert not {"\x1b", "\x07"} & set(said.out + said.err)


def test_nor_can_a_word_of_the_command_line(capsys: pytest.CaptureFixture[str]) -> None:
    assert cli.main(["explain", "\x1b[31mno-such-rule"]) == 2
    with pytest.raises(SystemExit):
        cli.main(["\x1b[31m"])
    assert "\x1b" not in "".join(capsys.readouterr())
