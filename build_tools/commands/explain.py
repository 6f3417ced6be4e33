"""explain: say what a rule wants and why."""

from __future__ import annotations

from argparse import ArgumentParser, Namespace

from build_tools.commands.shared.exit_codes import DONE
from build_tools.use_cases.explain import first_lines, manual


def arguments(parser: ArgumentParser) -> None:
    """What it takes."""
    parser.add_argument("rule", nargs="?", help="the rule's name; without it, all are listed")


def run(args: Namespace) -> int:
    """Print the manual of one rule, or the list of all. Raises Misuse for an unknown name."""
    if args.rule is not None:
        print(manual(args.rule))
        return DONE
    for name, line in first_lines().items():
        print(f"{name}\n    {line}")
    return DONE
