"""Changes in lists: of texts, and of things with fields of their own."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterator, Mapping, Sequence
from typing import Any

from build_tools.comparing.change import Change, Weight
from build_tools.comparing.heard_words import heard_changed
from build_tools.comparing.labels import Labels
from build_tools.comparing.pairing import (
    likeness_of_fields,
    likeness_of_texts,
    moved,
    paired,
)
from build_tools.comparing.phrases import as_words, changed

Fields = Mapping[str, Any]
_ACTIONS = ("travel", "turn", "jump", "gesture", "stillness", "transfer")

_THINGS: dict[str, tuple[str, tuple[str, ...], Weight]] = {
    "skills": ("the skill", ("skill",), Weight.TEACHING),
    "transitions": ("the transition", ("from", "to"), Weight.DANCE),
    "ending": ("the ending for", ("who",), Weight.DANCE),
    "curriculum": ("the curriculum line", ("nation", "stage", "says"), Weight.TEACHING),
    "read_by": ("the reading by", ("day", "role"), Weight.RECORD),
    "stimulus.items": ("the item", ("title",), Weight.TEACHING),
    "pictures": ("the picture", ("title",), Weight.TEACHING),
    "steps[].ask": ("the question", ("question",), Weight.TEACHING),
    "look_and_talk.questions": ("the question", ("question",), Weight.TEACHING),
    "motifs.*.actions": ("action", (), Weight.DANCE),
    "sections.*.danced": ("passage", (), Weight.DANCE),
}
"""For each list: what one thing of it is called, the fields that name it, and its weight."""


def texts_listed(
    label: str, weight: Weight, where: str, old: Sequence[Any], new: Sequence[Any]
) -> Iterator[Change]:
    """Texts or names that came, went, were reworded or changed places."""
    pairs = paired(old, new, lambda one: str(one), lambda a, b: likeness_of_texts(str(a), str(b)))
    for o, n in pairs:
        if o is None and n is not None:
            yield Change(f"{where}: {as_words(new[n])} was added to {label}", weight)
        elif n is None and o is not None:
            yield Change(f"{where}: {as_words(old[o])} was taken out of {label}", weight)
        elif o is not None and n is not None and old[o] != new[n]:
            yield Change(
                f"{where}: in {label}, {as_words(old[o])} now reads {as_words(new[n])}",
                weight,
            )
    if moved(pairs):
        yield Change(f"{where}: the order of {label} changed", weight)


def listed(
    labels: Labels, path: str, where: str, old: Sequence[Fields], new: Sequence[Fields]
) -> Iterator[Change]:
    """Things with fields that came, went, changed or changed places."""
    kind, names, weight = _THINGS[path]
    pairs = paired(old, new, _key(names), _likeness(names))
    for o, n in pairs:
        if o is None and n is not None:
            yield Change(f"{where}: {kind} {_called(names, new[n], n)} was added", weight)
        elif n is None and o is not None:
            yield Change(f"{where}: {kind} {_called(names, old[o], o)} was taken out", weight)
        elif o is not None and n is not None:
            called = f"{kind} {_called(names, new[n], n)}"
            yield from _parts(labels, path, f"{where}: {called}", weight, old[o], new[n])
    if moved(pairs):
        label = labels.known[path][0] if path in labels.known else f"{kind}s"
        yield Change(f"{where}: the order of {label.removeprefix('the ')} changed", weight)


def _parts(
    labels: Labels, path: str, where: str, weight: Weight, old: Fields, new: Fields
) -> Iterator[Change]:
    for name in [*new, *(name for name in old if name not in new)]:
        before, after = old.get(name), new.get(name)
        if before == after:
            continue
        label, heavy = labels.known.get(f"{path}[].{name}", (_plain_name(path, name), weight))
        said = heard_changed(where, before, after) if name == "heard" else None
        yield Change(said or changed(where, label, before, after), heavy)


def _plain_name(path: str, name: str) -> str:
    if path == "motifs.*.actions" and name in _ACTIONS:
        return f"the counts to {name.replace('stillness', 'be still')}"
    if name == "as":
        return "the pupils’ word" if path == "motifs.*.actions" else "how parts fit"
    return {
        "question": "the words",
        "answers": "what pupils may say",
        "looks_back_to": "the lesson it looks back to",
        "body_part": "the body part",
        "with": "what is done at the same time",
        "who": "who dances",
        "after": "the counts between starts",
        "parts": "the number of parts",
        "times": "how often",
        "what": "what is danced",
    }.get(name, f"the {name.replace('_', ' ')}")


def _key(names: tuple[str, ...]) -> Callable[[Fields], Hashable]:
    def key(thing: Fields) -> Hashable:
        return repr([thing.get(name) for name in names] if names else thing)

    return key


def _likeness(names: tuple[str, ...]) -> Callable[[Fields, Fields], float]:
    def likeness(old: Fields, new: Fields) -> float:
        shared = likeness_of_fields(old, new)
        if not names:
            return shared
        texts = [" ".join(str(thing.get(name)) for name in names) for thing in (old, new)]
        return max(shared, likeness_of_texts(*texts))

    return likeness


def _called(names: tuple[str, ...], thing: Fields, place: int) -> str:
    if names == ("from", "to"):
        return f"from {thing.get('from')} to {thing.get('to')}"
    if names:
        return as_words(str(thing.get(names[-1])))
    word = thing.get("as") if "what" not in thing else None
    return f"{place + 1} ({word})" if word else str(place + 1)
