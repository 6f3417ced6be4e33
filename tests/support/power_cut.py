"""What a disk may hold after the power was cut: a run is recorded, and its ends are made again.

A system keeps what a program writes in its memory and puts it on the disk when it likes, in any
order, except that `fsync` waits for a file's bytes, or for the names in a folder. So after a cut
all that was waited for is there, and of the rest anything may be: T. S. Pillai and others, "All
File Systems Are Not Created Equal", OSDI 2014, whose model of a renaming as one step is kept here.

A run is recorded at the calls by which Python changes files. That no change went round them is
seen by making the end of the run again from the record.
"""

from __future__ import annotations

import io
import os
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

ROOT = 0
SAMPLED = 40
Tree = dict[str, bytes | None]
"""A folder's files by their paths with `/`, and its folders, which hold None."""


@dataclass(frozen=True, slots=True)
class Named:
    """A name in a folder now leads to a file or folder, by its number; `old` leads there no more.

    Without `number`, the name is gone.
    """

    folder: int
    name: str
    number: int | None
    old: tuple[int, str] | None = None


@dataclass(frozen=True, slots=True)
class Bytes:
    """A file holds these bytes."""

    number: int
    data: bytes


@dataclass(frozen=True, slots=True)
class Synced:
    """It was waited for a file's bytes, or the names in a folder."""

    number: int


Step = Named | Bytes | Synced


@dataclass(slots=True)
class Recording:
    """A folder's state before a run, and each step of the run."""

    root: Path
    before: list[Step] = field(default_factory=list)
    steps: list[Step] = field(default_factory=list)
    folders: dict[int, dict[str, int]] = field(default_factory=lambda: {ROOT: {}})
    """As the system sees them at this moment: the names in each folder."""
    _next: int = 1
    _open: set[Path] = field(default_factory=set)

    def note(self, path: Path) -> bool:
        """Whether a path belongs to what is recorded; then what was written before is noted."""
        if not path.is_relative_to(self.root) or path.name.endswith(".lock"):
            return False
        self.flush()
        return True

    def flush(self) -> None:
        """Note the bytes of files that were written since the last step."""
        for path in sorted(self._open):
            if path.exists():
                self.steps.append(Bytes(self.number(path), path.read_bytes()))
        self._open.clear()

    def number(self, path: Path) -> int:
        """The number of the file or folder at a path."""
        found = ROOT
        for part in path.relative_to(self.root).parts:
            found = self.folders[found][part]
        return found

    def made(self, path: Path, folder: bool) -> None:
        """A new file or folder stands at a path."""
        number, self._next = self._next, self._next + 1
        if folder:
            self.folders[number] = {}
        else:
            self._open.add(path)
        self._name(Named(self.number(path.parent), path.name, number))

    def written(self, path: Path) -> None:
        """A file that was there is being written."""
        self._open.add(path)

    def gone(self, path: Path) -> None:
        """A name is gone."""
        self._name(Named(self.number(path.parent), path.name, None))

    def moved(self, old: Path, new: Path) -> None:
        """A file or folder has another name."""
        parent, number = self.number(old.parent), self.number(old)
        self._name(Named(self.number(new.parent), new.name, number, (parent, old.name)))

    def _name(self, step: Named) -> None:
        apply(self.folders, step)
        self.steps.append(step)


def apply(folders: dict[int, dict[str, int]], step: Named) -> None:
    """Change the names in folders as a step does."""
    names = folders.setdefault(step.folder, {})
    if step.number is None:
        names.pop(step.name, None)
        return
    if step.old:
        before = folders.get(step.old[0], {})
        if before.get(step.old[1]) == step.number:
            del before[step.old[1]]
    names[step.name] = step.number


@contextmanager
def recorded(root: Path) -> Iterator[Recording]:
    """Record what happens to the files below `root` inside the block."""
    found = Recording(root)
    for path in sorted(root.rglob("*")):
        if not path.name.endswith(".lock"):
            found.made(path, path.is_dir())
    found.flush()
    found.before, found.steps = found.steps, []
    with _patched(found):
        yield found
    found.flush()
    assert tree_of(root) == tree(found, found.steps), "a change went round the record"


def states(found: Recording, cut: int) -> Iterator[Tree]:
    """What the disk may hold after a cut before the step `cut`.

    All that was waited for, with the rest whole, gone, or with files empty or half; with one step
    less or one step more than that, and without the first of them, as where the order was another.
    """
    done = found.steps[:cut]
    sure = certain(done)
    open_steps = [n for n, step in enumerate(done) if n not in sure and not _is_sync(step)]
    names = [n for n in open_steps if isinstance(done[n], Named)]

    def with_(chosen: Sequence[int], data: Callable[[bytes], bytes] = bytes) -> Tree:
        return tree(
            found,
            [
                Bytes(step.number, data(step.data)) if isinstance(step, Bytes) and n not in sure
                else step
                for n, step in enumerate(done)
                if n in sure or n in chosen
            ],
        )  # fmt: skip

    yield with_(open_steps)
    yield with_([])
    yield with_(names)
    yield with_(open_steps, lambda data: data[: len(data) // 2])
    for at, one in enumerate(open_steps):
        yield with_([n for n in open_steps if n != one])
        yield with_([one])
        yield with_(open_steps[at + 1 :])


def every_end(found: Recording, thorough: bool) -> Iterator[tuple[int, Tree]]:
    """Each state the disk may be in after a cut at any moment, once, and after how many steps.

    Where it is not `thorough`, some of them, the same each time: of three moments in seven, so that
    none of a cycle of steps, such as those that write a file, is passed over each time.
    """
    seen = set()
    ends = []
    moments = range(len(found.steps) + 1)
    for cut in (n for n in moments if thorough or n % 7 in (0, 2, 5) or n == moments[-1]):
        for state in states(found, cut):
            if (key := hash(frozenset(state.items()))) not in seen:
                seen.add(key)
                ends.append((cut, state))
    yield from ends if thorough else ends[:: max(1, len(ends) // SAMPLED)]


def certain(done: Sequence[Step]) -> set[int]:
    """The numbers of the steps that are on the disk, since it was waited for them."""
    sure: set[int] = set()
    open_steps: dict[int, list[int]] = {}
    for n, step in enumerate(done):
        match step:
            case Synced(number):
                sure.update(open_steps.pop(number, ()))
            case Bytes(number):
                open_steps.setdefault(number, []).append(n)
            case Named(folder, _, _, old):
                for one in {folder, *([old[0]] if old else [])}:
                    open_steps.setdefault(one, []).append(n)
    return sure


def tree(found: Recording, steps: Sequence[Step]) -> Tree:
    """The files after some steps of a run."""
    folders: dict[int, dict[str, int]] = {ROOT: {}}
    data: dict[int, bytes] = {}
    kinds = found.folders.keys()
    for step in (*found.before, *steps):
        if isinstance(step, Named):
            apply(folders, step)
        elif isinstance(step, Bytes):
            data[step.number] = step.data
    made: Tree = {}

    def walk(number: int, at: str) -> None:
        for name, one in sorted(folders.get(number, {}).items()):
            path = f"{at}{name}"
            if one in kinds:
                made[path] = None
                walk(one, f"{path}/")
            else:
                made[path] = data.get(one, b"")

    walk(ROOT, "")
    return made


def tree_of(root: Path) -> Tree:
    """The files of a folder as they are."""
    return {
        path.relative_to(root).as_posix(): None if path.is_dir() else path.read_bytes()
        for path in sorted(root.rglob("*"))
        if not path.name.endswith(".lock")
    }


def make(state: Tree, root: Path) -> None:
    """Put a state into an empty folder."""
    root.mkdir()
    for name, data in state.items():
        if data is None:
            (root / name).mkdir()
        else:
            (root / name).write_bytes(data)


def _is_sync(step: Step) -> bool:
    return isinstance(step, Synced)


def _of(handle: int) -> Path:
    return Path(f"/proc/self/fd/{handle}").readlink()


@contextmanager
def _patched(found: Recording) -> Iterator[None]:
    real = {name: getattr(os, name) for name in ("fsync", "mkdir", "replace", "rename")}
    real |= {name: getattr(os, name) for name in ("unlink", "remove", "rmdir")}
    real_open = io.open

    def place(path: Any, handle: int | None = None) -> Path:
        here = _of(handle) if handle is not None else Path.cwd()
        return here / str(os.fspath(path))

    def opened(file: Any, mode: str = "r", *given: Any, **options: Any) -> Any:
        writes = set(mode) & set("wxa+") and not isinstance(file, int)
        ours = writes and found.note(place(file))
        new = ours and not place(file).exists()
        stream = real_open(file, mode, *given, **options)
        if ours:
            (found.made(place(file), False) if new else found.written(place(file)))
        return stream

    def synced(handle: int) -> None:
        path = _of(handle)
        ours = found.note(path)
        real["fsync"](handle)
        if ours:
            found.steps.append(Synced(found.number(path)))

    def made(path: Any, *given: Any, dir_fd: int | None = None) -> None:
        at = place(path, dir_fd)
        ours = found.note(at)
        real["mkdir"](path, *given, dir_fd=dir_fd)
        if ours:
            found.made(at, True)

    def moving(name: str) -> Callable[..., None]:
        def moved(old: Any, new: Any, **options: Any) -> None:
            ours = found.note(place(old))
            real[name](old, new, **options)
            if ours:
                found.moved(place(old), place(new))

        return moved

    def ending(name: str) -> Callable[..., None]:
        def gone(path: Any, *, dir_fd: int | None = None) -> None:
            at = place(path, dir_fd)
            ours = found.note(at)
            real[name](path, dir_fd=dir_fd)
            if ours:
                found.gone(at)

        return gone

    patches: dict[str, Callable[..., Any]] = {"fsync": synced, "mkdir": made}
    patches |= {name: moving(name) for name in ("replace", "rename")}
    patches |= {name: ending(name) for name in ("unlink", "remove", "rmdir")}
    for name, patch in patches.items():
        setattr(os, name, patch)
    io.open = opened
    try:
        yield
    finally:
        io.open = real_open
        for name, one in real.items():
            setattr(os, name, one)
