"""Where one dancer sinks in a part that is made up, the end says at which level all are.

The broken thread sinks, the others hold, and the loom begins again: nobody has told the one on the
floor to come up, and the next part starts standing. The cue that ends the part, or the place where
it ends, says tall, low or standing for everybody.

Bad:
    rules: [The first to move sinks slowly and holds.]
    ends_on: The drum starts.
    end: {place: Where you are, …}
Good:
    rules: [The first to move sinks slowly and holds.]
    ends_on: The drum starts. All rise.
    end: {place: Where you are, …}
"""

from __future__ import annotations

from collections.abc import Iterator

from build_tools.model.unit import Unit
from build_tools.problem import Grade
from build_tools.rules.rule import Finding
from build_tools.sentences.sayings import Saying

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_ONE_SINKS = Saying(
    """
    first|one|somebody|someone|whoever|leader|dancer ~9 sink|sinks|kneel|kneels|crouch|crouches|
        collapse|collapses
    first|one|somebody|someone|whoever|leader|dancer ~6 goes|go|lie|lies|sit|sits ~1 low|down
    """
)
_ALL = Saying("all|everyone|everybody|whole|class")
_A_LEVEL = Saying(
    """
    low|high|tall|middle|level|up|upright|standing|down|floor
    rise|rises|stand|stands|sink|sinks|stretch|stretches|grow|grows|lift|lifts|kneel|crouch
    """
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each improvised section that leaves somebody low."""
    for letter, section in unit.dance.sections.items():
        rules = section.improvised_rules
        sinks = next(((n, s) for n, r in enumerate(rules) if (s := _ONE_SINKS.said(r))), None)
        if sinks is None or section.ends_on is None:
            continue
        n, said = sinks
        later = [rule for rule in rules[n + 1 :] if _ALL.said(rule)]
        after = (*later, section.ends_on, section.end.place)
        if _A_LEVEL.in_any(after):
            continue
        yield Finding(
            unit.file,
            ("sections", letter, "improvised", "ends_on"),
            f'in section {letter} rule {n + 1} lets one sink ("{said.text}"), and neither a later '
            "rule, `ends_on` nor the end's `place` says at which level all are: somebody is left "
            "low",
            "say in `ends_on` what all do, such as: all rise and stretch tall",
        )
