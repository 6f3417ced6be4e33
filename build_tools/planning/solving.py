"""Which units cover most with fewest repeats, exactly, by mixed-integer programming (HiGHS).

Maximum coverage as in Nemhauser, Wolsey and Fisher, 1978, with places. First the most words, then
the most slots filled, then the fewest repeats, then the units that come first in their order. The
solver is loaded here alone and only when it is called, since loading it takes a third of a second.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from build_tools.planning.problem import Problem

if TYPE_CHECKING:
    import highspy

Terms = Mapping[int, float]
"""Columns with their factors."""
_GAP = 0.99
"""All goals are whole numbers, so a bound closer than one proves them."""


class SolverError(RuntimeError):
    """The solver ended without an answer, which is a fault of ours."""


@dataclass(slots=True)
class _Rows:
    """The rows of the model, as they are written."""

    least: list[float] = field(default_factory=list)
    most: list[float] = field(default_factory=list)
    start: list[int] = field(default_factory=lambda: [0])
    column: list[int] = field(default_factory=list)
    factor: list[float] = field(default_factory=list)

    def add(self, terms: Terms, least: float, most: float) -> int:
        """Add one; gives its number."""
        self.least.append(least)
        self.most.append(most)
        self.column += terms.keys()
        self.factor += terms.values()
        self.start.append(len(self.column))
        return len(self.least) - 1


@dataclass(slots=True)
class _Columns:
    """The columns: first one a unit, then one a group of words, then places."""

    whole: list[bool] = field(default_factory=list)

    def add(self, whole: bool = True) -> int:
        """Add one between 0 and 1; gives its number."""
        self.whole.append(whole)
        return len(self.whole) - 1


def best_units(problem: Problem) -> frozenset[int] | None:
    """The units of a best plan; None where the pins cannot all be kept."""
    units = range(len(problem.words))
    if not units:
        return None if problem.pins else frozenset()
    columns, rows = _Columns(), _Rows()
    for _ in units:
        columns.add()
    weights = _words(problem, columns, rows)
    _places(problem, columns, rows)
    for slot, some in problem.pins:
        if slot is None:
            rows.add(dict.fromkeys(some, 1.0), 1, len(some) or 1)
    size = {unit: float(len(problem.words[unit])) for unit in units}
    chosen = dict.fromkeys(units, 1.0)
    covered = rows.add(weights, 0, sum(weights.values()))
    filled = rows.add(chosen, 0, problem.slots)
    danced = rows.add(size, 0, sum(size.values()))
    model = _model(columns, rows)
    # a word weighs more than all slots together, so that what is covered comes first
    word_weighs = problem.slots + 1
    words_first = {one: -weight * word_weighs for one, weight in weights.items()}
    found = _solved(model, {**words_first, **dict.fromkeys(units, -1.0)})
    if found is None:
        return None
    most = sum(weight for one, weight in weights.items() if found[one] > 0.5)
    many = float(sum(found[unit] > 0.5 for unit in units))
    model.changeRowBounds(covered, most, most)
    model.changeRowBounds(filled, many, many)
    found = _best(model, size)
    least = sum(size[unit] for unit in units if found[unit] > 0.5)
    model.changeRowBounds(danced, least, least)
    found = _best(model, {unit: float(unit) for unit in units})
    return frozenset(unit for unit in units if found[unit] > 0.5)


def _words(problem: Problem, columns: _Columns, rows: _Rows) -> dict[int, float]:
    """A column for all words of the same units, met where one of these is chosen; how many each."""
    having: dict[frozenset[int], int] = defaultdict(int)
    for word in sorted({word for words in problem.words for word in words}):
        having[frozenset(n for n, words in enumerate(problem.words) if word in words)] += 1
    found = {}
    for units, number in having.items():
        met = columns.add(whole=False)
        found[met] = float(number)
        rows.add({met: -1.0, **dict.fromkeys(sorted(units), 1.0)}, 0, len(units))
    return found


def _places(problem: Problem, columns: _Columns, rows: _Rows) -> None:
    """Each chosen unit has one slot that it fits, each slot one unit, in an order that holds.

    Units that no order and no pin touches are placed by their lengths alone, all of one length
    together: which of them stands where decides nothing.
    """
    pinned = {slot: set(range(len(problem.words))) for slot, _ in problem.pins if slot is not None}
    for slot, some in problem.pins:
        if slot is not None:
            pinned[slot] &= some
    touched = {unit for pair in problem.before for unit in pair}
    touched |= {unit for some in pinned.values() for unit in some}
    at: dict[int, dict[int, int]] = {}
    in_slot: dict[int, list[int]] = defaultdict(list)
    alike: dict[frozenset[int], list[int]] = defaultdict(list)
    for unit, fits in enumerate(problem.fits):
        if unit not in touched:
            alike[fits.difference(pinned)].append(unit)
            continue
        at[unit] = {s: columns.add() for s in sorted(fits) if unit in pinned.get(s, {unit})}
        for slot, column in at[unit].items():
            in_slot[slot].append(column)
        rows.add({unit: 1.0, **dict.fromkeys(at[unit].values(), -1.0)}, 0, 0)
    for fits, group in alike.items():
        here = {slot: columns.add() for slot in sorted(fits)}
        for slot, column in here.items():
            in_slot[slot].append(column)
        rows.add({**dict.fromkeys(group, 1.0), **dict.fromkeys(here.values(), -1.0)}, 0, 0)
    for slot in range(problem.slots):
        rows.add(dict.fromkeys(in_slot[slot], 1.0), 1 if slot in pinned else 0, 1)
    for first, then in sorted(problem.before):
        _ordered(at[first], at[then], (first, then) in problem.needs, problem.slots, rows)


def _ordered(
    first: Mapping[int, int], then: Mapping[int, int], needed: bool, slots: int, rows: _Rows
) -> None:
    """The later unit is not in the slots up to each, unless the earlier one is in those before."""
    for slot in range(slots):
        later = [column for s, column in then.items() if s <= slot]
        if not later:
            continue
        soon = [column for s, column in first.items() if s < slot]
        late = [column for s, column in first.items() if s >= slot]
        if needed:
            terms = {**dict.fromkeys(later, 1.0), **dict.fromkeys(soon, -1.0)}
            rows.add(terms, -1, 0)
        else:
            rows.add(dict.fromkeys((*later, *late), 1.0), 0, 1)


def _model(columns: _Columns, rows: _Rows) -> highspy.Highs:
    import highspy
    import numpy as np

    model: highspy.Highs = highspy.Highs()  # type: ignore[no-untyped-call]
    model.setOptionValue("output_flag", False)
    for name, value in (
        ("threads", 1), ("random_seed", 1), ("mip_rel_gap", 0.0), ("mip_abs_gap", _GAP),
        ("mip_feasibility_tolerance", 1e-9), ("mip_allow_restart", False),
        ("mip_allow_cut_separation_at_nodes", False),
    ):  # fmt: skip
        model.setOptionValue(name, value)
    lp = highspy.HighsLp()
    kind = highspy.HighsVarType
    lp.num_col_, lp.num_row_ = len(columns.whole), len(rows.least)
    lp.col_cost_ = np.zeros(lp.num_col_)
    lp.col_lower_, lp.col_upper_ = np.zeros(lp.num_col_), np.ones(lp.num_col_)
    lp.row_lower_, lp.row_upper_ = np.array(rows.least, float), np.array(rows.most, float)
    lp.integrality_ = [kind.kInteger if whole else kind.kContinuous for whole in columns.whole]
    lp.a_matrix_.format_ = highspy.MatrixFormat.kRowwise
    lp.a_matrix_.start_ = np.array(rows.start)
    lp.a_matrix_.index_ = np.array(rows.column)
    lp.a_matrix_.value_ = np.array(rows.factor)
    model.passModel(lp)
    return model


def _solved(model: highspy.Highs, costs: Terms) -> Sequence[float] | None:
    """The values of all columns where the sum of `costs` is least; None where nothing holds."""
    import highspy

    for column in range(model.getNumCol()):
        model.changeColCost(column, costs.get(column, 0.0))
    model.run()
    status = model.getModelStatus()
    if status == highspy.HighsModelStatus.kInfeasible:
        return None
    if status != highspy.HighsModelStatus.kOptimal:
        raise SolverError(f"the solver says {model.modelStatusToString(status)}")
    return list(model.getSolution().col_value)


def _best(model: highspy.Highs, costs: Terms) -> Sequence[float]:
    found = _solved(model, costs)
    if found is None:
        raise SolverError("what held before holds no more")
    return found


def score(problem: Problem, units: Iterable[int]) -> tuple[int, int, int, int]:
    """How good a plan of `units` is, the least the best: words left out, slots empty, repeats."""
    chosen = list(units)
    met = frozenset[tuple[str, str]]().union(*(problem.words[unit] for unit in chosen))
    every = frozenset[tuple[str, str]]().union(*problem.words)
    repeats = sum(len(problem.words[unit]) for unit in chosen) - len(met)
    return len(every) - len(met), problem.slots - len(chosen), repeats, sum(chosen)
