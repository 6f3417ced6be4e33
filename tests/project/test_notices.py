"""NOTICES.json names every bundled part and every package that the software uses."""

from __future__ import annotations

import hashlib
import json
from importlib.metadata import Distribution, PackageMetadata
from pathlib import Path

import pytest

from build_tools.disk.places import PROJECT
from build_tools.project import notices

ROOT = Path(__file__).resolve().parents[2]
LOCK = """\
jinja2==3.1.6 \\
    --hash=sha256:{a} \\
    --hash=sha256:{b}
    # via
    #   dance-unit-bank (pyproject.toml)
    #   mkdocs
markupsafe==3.0.4 \\
    --hash=sha256:{b}
    # via jinja2
mkdocs==1.6.1 \\
    --hash=sha256:{a}
    # via dance-unit-bank (pyproject.toml)
pywin==1 ; sys_platform == 'win32' \\
    --hash=sha256:{a}
    # via markupsafe
ruff==1 \\
    --hash=sha256:{a}
    # via dance-unit-bank (pyproject.toml)
""".format(a="a" * 64, b="b" * 64)


def about(headers: str, folder: Path) -> PackageMetadata:
    """A package's own words, as installed."""
    home = folder / "x-1.dist-info"
    home.mkdir()
    (home / "METADATA").write_text(f"Metadata-Version: 2.4\nName: x\nVersion: 1\n{headers}\n")
    return Distribution.at(home).metadata


def test_the_file_is_fresh() -> None:
    text = (ROOT / "NOTICES.json").read_text(encoding="utf-8")
    assert text == notices.notices_text(ROOT), "run `python3 build_tools notices`"


def test_every_bundled_file_is_named_with_its_digest() -> None:
    named = json.loads((ROOT / "NOTICES.json").read_text(encoding="utf-8"))["bundled"]
    digests = {notice["name"].split(": ")[1]: notice["digest"] for notice in named}
    folders = (notices.FONT_FOLDER, notices.LICENCE_FOLDER)
    files = [path for folder in folders for path in (ROOT / folder).rglob("*") if path.is_file()]
    assert {path.suffix for path in files} == {".woff2", ".txt"}
    assert digests == {
        path.relative_to(ROOT).as_posix(): f"sha256:{hashlib.sha256(path.read_bytes()).hexdigest()}"
        for path in files
    }


def test_every_bundled_font_is_the_locked_packages_own_file() -> None:
    package = ROOT / "node_modules" / notices.FONT / "files"
    originals = {hashlib.sha256(path.read_bytes()).hexdigest() for path in package.iterdir()}
    for path in (ROOT / notices.FONT_FOLDER).rglob("*.woff2"):
        assert hashlib.sha256(path.read_bytes()).hexdigest() in originals, path.name


def test_what_builds_the_site_is_the_closure_of_the_run_time_packages() -> None:
    pins = notices.read_lock(LOCK)
    found = notices.closure(pins, ["jinja2"])
    assert [pin.name for pin in found] == ["jinja2", "markupsafe", "pywin"]
    assert found[0].digest == f"sha256:{'a' * 64}"
    assert pins["jinja2"].parents == {"dance-unit-bank", "mkdocs"}


def test_a_package_of_one_system_reads_the_same_on_every_system() -> None:
    notice = notices.package_notice(notices.read_lock(LOCK)["pywin"])
    assert notice.licence == "see the package, which is installed where sys_platform == 'win32'"


def test_run_time_names_are_read_from_pyproject() -> None:
    text = '[project]\ndependencies = ["PyYAML>=6", "mkdocs_material", "x[y]; z"]\n'
    assert notices.run_time_names(text) == ["pyyaml", "mkdocs-material", "x"]


@pytest.mark.parametrize(
    ("headers", "licence"),
    [
        ("License-Expression: MIT\nLicense: other", "MIT"),
        ("License: long\nClassifier: License :: OSI Approved :: BSD License", "BSD License"),
        ("Classifier: License :: OSI Approved\nLicense: Apache-2.0", "Apache-2.0"),
    ],
)
def test_a_licence_is_read_from_the_packages_words(
    headers: str, licence: str, tmp_path: Path
) -> None:
    assert notices.licence_of(about(headers, tmp_path)) == licence


def test_a_licence_is_known_by_its_own_words(tmp_path: Path) -> None:
    """The words of MIT in the SPDX License List, which this project's LICENSE repeats."""
    text = (PROJECT / "LICENSE").read_text(encoding="utf-8")
    theirs = text.replace("MIT License\n\n", "").replace("2026 The dance unit bank", "2024 Others")
    nothing_said = about("Summary: y", tmp_path)
    assert notices.licence_of(nothing_said, theirs) == "MIT"
    less = theirs.replace("free of charge, ", "")
    with pytest.raises(ValueError, match="states no licence"):
        notices.licence_of(nothing_said, less)


def test_a_package_without_a_licence_is_not_passed_over(tmp_path: Path) -> None:
    with pytest.raises(ValueError, match="states no licence"):
        notices.licence_of(about("Summary: y", tmp_path))


def test_a_lock_of_another_form_is_not_read_as_empty() -> None:
    with pytest.raises(ValueError, match="another form"):
        notices.read_lock("jinja2 @ somewhere\n")


def test_a_stale_file_is_told_and_writing_it_mends_it(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for name in ("requirements.lock", "pyproject.toml", "package-lock.json"):
        (tmp_path / name).write_bytes((ROOT / name).read_bytes())
    (tmp_path / "NOTICES.json").write_text("{}\n", encoding="utf-8")
    assert not notices.run(check=True, root=tmp_path)
    assert "python3 build_tools notices" in capsys.readouterr().out
    assert notices.run(check=False, root=tmp_path)
    assert notices.run(check=True, root=tmp_path)
