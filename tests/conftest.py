"""What tests share: the `--thorough` option, the same examples in every run, and a browser."""

from __future__ import annotations

import os
from collections.abc import Iterator

import pytest
from hypothesis import settings
from playwright.sync_api import Browser

from build_tools.__main__ import INSIDE
from build_tools.project.tools_for_tests import tools
from tests.support.browser import launched

settings.register_profile("bank", derandomize=True, database=None, deadline=None, max_examples=100)
settings.register_profile("thorough", settings.get_profile("bank"), max_examples=1000)


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption(
        "--thorough", action="store_true", help="many more examples, and every page of the site"
    )


def pytest_configure(config: pytest.Config) -> None:
    settings.load_profile("thorough" if config.getoption("--thorough") else "bank")
    if not hasattr(config, "workerinput"):
        # So that plain `pytest` finds the same programs; the workers inherit what is set here.
        os.environ.update(tools().environment())
        # What tests start is run by this very Python, not set up first and run by another.
        os.environ[INSIDE] = "1"


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """One browser a worker: a second one beside it would not start."""
    with launched() as found:
        yield found


@pytest.fixture(scope="session")
def thorough(pytestconfig: pytest.Config) -> bool:
    """Whether this is the long run, `python3 build_tools test --thorough`."""
    return bool(pytestconfig.getoption("--thorough"))
