"""One lock for Linux, Windows and macOS, checked by hash, that names no address."""

from __future__ import annotations

import json
import re
import subprocess
from pathlib import Path

import pytest

from build_tools.project.lock import compile_command, uv_command, uv_environment

ROOT = Path(__file__).resolve().parents[2]
LOCK = ROOT / "requirements.lock"
SYSTEMS = ("linux", "windows", "aarch64-apple-darwin", "x86_64-apple-darwin")
PYTHONS = ("3.11", "3.13")
ADDRESS = re.compile(r"\w+://|--(?:extra-)?index-url|--find-links|\bfile:|\.(?:org|com|io|net)\b")

HASH = re.compile(r"sha256:[0-9a-f]{64}")


def without_hashes(lock: str) -> list[str]:
    """The lock's packages, versions and reasons."""
    lines = (line.removesuffix("\\").strip() for line in lock.splitlines())
    return [line for line in lines if not line.startswith("--hash=")]


def resolve(lock: Path, system: str, python: str, folder: Path) -> subprocess.CompletedProcess[str]:
    """Ask uv whether every file that the lock wants is there for that system and Python."""
    command = uv_command("pip", "install", "--dry-run", "--target", str(folder / "none"))
    command += ["--python-platform", system, "--python-version", python]
    command += ["--only-binary", ":all:", "--require-hashes", "--requirements", str(lock)]
    return subprocess.run(
        command, env=uv_environment(), capture_output=True, text=True, encoding="utf-8", check=False
    )


@pytest.mark.parametrize(
    ("system", "python"),
    [
        pytest.param(system, python, marks=() if (n + m) % 2 == 0 else pytest.mark.thorough)
        for n, system in enumerate(SYSTEMS)
        for m, python in enumerate(PYTHONS)
    ],
)
def test_the_lock_resolves(system: str, python: str, tmp_path: Path) -> None:
    done = resolve(LOCK, system, python, tmp_path)
    assert done.returncode == 0, done.stderr


@pytest.mark.parametrize(
    "system", [SYSTEMS[0], *(pytest.param(one, marks=pytest.mark.thorough) for one in SYSTEMS[1:])]
)
def test_a_lock_with_a_version_that_is_not_there_does_not_resolve(
    system: str, tmp_path: Path
) -> None:
    text = LOCK.read_text(encoding="utf-8")
    doctored, times = re.subn(r"^pyyaml==\S+", "pyyaml==0.0.1", text, flags=re.MULTILINE)
    assert times == 1
    wrong = tmp_path / "wrong.lock"
    wrong.write_text(doctored, encoding="utf-8")
    done = resolve(wrong, system, "3.11", tmp_path)
    assert done.returncode != 0
    assert "pyyaml" in done.stderr


def test_a_lock_without_one_of_its_packages_does_not_resolve(tmp_path: Path) -> None:
    blocks = re.split(r"\n(?=[a-z0-9])", LOCK.read_text(encoding="utf-8"))
    wrong = tmp_path / "wrong.lock"
    wrong.write_text(
        "\n".join(block for block in blocks if not block.startswith("markupsafe==")),
        encoding="utf-8",
    )
    done = resolve(wrong, "windows", "3.11", tmp_path)
    assert done.returncode != 0
    assert "markupsafe" in done.stderr


def test_the_lock_is_what_pyproject_asks_for(tmp_path: Path) -> None:
    for name in ("pyproject.toml", LOCK.name):
        (tmp_path / name).write_bytes((ROOT / name).read_bytes())
    subprocess.run(
        compile_command(upgrade=False),
        cwd=tmp_path,
        env=uv_environment(),
        stdout=subprocess.DEVNULL,
        check=True,
    )
    remade = (tmp_path / LOCK.name).read_text(encoding="utf-8")
    held = LOCK.read_text(encoding="utf-8")
    assert without_hashes(remade) == without_hashes(held)
    # A published version may gain files later; those that the lock holds stay what they were.
    assert set(HASH.findall(held)) <= set(HASH.findall(remade))


def test_every_package_has_one_version_and_a_hash() -> None:
    blocks = re.split(r"\n(?=[a-z0-9])", LOCK.read_text(encoding="utf-8").strip())
    names = [block.split("==")[0] for block in blocks]
    assert len(names) > 50
    assert sorted(set(names)) == names
    assert [block for block in blocks if "--hash=sha256:" not in block] == []


def test_the_lock_names_no_address() -> None:
    assert ADDRESS.findall(LOCK.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize(
    "line",
    [
        "--index-url https://packages.example/simple",
        "    # from file:///some/wheels",
        "x @ git+ssh://host/x",
        "# via packages.example.org",
    ],
)
def test_an_address_in_a_lock_would_be_seen(line: str) -> None:
    assert ADDRESS.findall(line) != []


def test_the_npm_lock_pins_every_package_by_hash_and_names_no_source() -> None:
    lock = json.loads((ROOT / "package-lock.json").read_text(encoding="utf-8"))
    wanted = json.loads((ROOT / "package.json").read_text(encoding="utf-8"))["devDependencies"]
    packages = {name: held for name, held in lock["packages"].items() if name}
    own = {name.removeprefix("node_modules/"): held["version"] for name, held in packages.items()}
    assert {name: own.get(name) for name in wanted} == wanted
    needed = {name for held in packages.values() for name in held.get("dependencies", {})}
    assert {name.rpartition("node_modules/")[2] for name in packages} == set(wanted) | needed
    for held in packages.values():
        assert held["integrity"].startswith("sha512-")
        assert "resolved" not in held
