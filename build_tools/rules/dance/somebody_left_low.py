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
from build_tools.sentences.sayings import Said, Saying

GRADE: Grade = "question"
READS = "en"
SOURCE = "common practice, no source"
_ONE_SINKS = Saying(
    """
    @one ~9 sink|sinks|kneel|kneels|crouch|crouches|collapse|collapses
    @one ~6 goes|go|lie|lies|sit|sits ~1 low|down
    @one ~6 melt|melts|fall|falls|drop|drops ~2 floor|ground|down|low
    """,
    {
        "one": (
            "first one somebody someone whoever leader dancer last =smallest =tallest =nearest "
            "number"
        )
    },
)
_NOT_ALL_SINK = Saying("everyone|everybody|all ~1 sink|sinks|kneel|kneels|crouch|crouches")
"""What is denied where some sink only."""
_COMES_UP = Saying(
    """
    sink|sinks|kneel|kneels|crouch|crouches|down|low ~~6 rise|rises|stand|stands|up|grow|grows
        ~1 again|up|tall|back
    others|rest|all|everyone ~1 follow|follows|join|joins
    """
)
"""Said of it in the same rule: it comes up again, or all go down."""
_ALL = Saying("all|everyone|everybody|whole|class")
_A_LEVEL = Saying(
    """
    low|high|middle !beat|tap|drum|sound|note|voice|stroke
    tall|level|up|upright|standing|down|floor
    rise|rises|stand|stands|sink|sinks|stretch|stretches|grow|grows|lift|lifts|kneel|crouch
        !<drum|drumming|sound|music|beat|voice
    """
)


def check(unit: Unit) -> Iterator[Finding]:
    """Yield a finding for each improvised section that leaves somebody low."""
    for letter, section in unit.dance.sections.items():
        rules = section.improvised_rules
        sinks = next(((n, s) for n, r in enumerate(rules) if (s := _one_sinks(r))), None)
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


def _one_sinks(rule: str) -> Said | None:
    """Where a rule lets one go down, and does not bring it up again."""
    if _COMES_UP.said(rule):
        return None
    return _ONE_SINKS.said(rule) or _NOT_ALL_SINK.denied(rule)
