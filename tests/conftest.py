"""What tests share: the `--thorough` option, the same examples in every run, and a browser."""

from __future__ import annotations

import gc
import multiprocessing
import os
import signal
from collections.abc import Generator, Iterator
from pathlib import Path

import pytest
from hypothesis import settings
from playwright.sync_api import Browser

from build_tools.__main__ import INSIDE
from build_tools.checking.quick_check import BETWEEN_COLLECTIONS
from build_tools.project.tools_for_tests import tools
from tests.support.banks import THOROUGH
from tests.support.browser import launched
from tests.support.quick_disk import do_not_wait

HERE = Path(__file__).parent
LONGEST = (
    *("site", "agreement", "planted", "mutations", "packs", "publishing", "drafting", "commands"),
    *("fuzzing", "movement", "manuals", "wordings", "body", "rules", "unusual_units", "views"),
)
settings.register_profile("bank", derandomize=True, database=None, deadline=None, max_examples=25)
settings.register_profile("thorough", settings.get_profile("bank"), max_examples=1000)


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption(
        "--thorough", action="store_true", help="many more examples, and every page of the site"
    )


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Leave to the long run what is marked `thorough`: other states of what is looked at here.

    Folders whose files take long come first, so that no worker is left alone with one at the end.
    """
    first = {path: path.relative_to(HERE).parts[0] in LONGEST for path in {i.path for i in items}}
    items.sort(key=lambda item: not first[item.path])
    if not config.getoption("--thorough"):
        later = [item for item in items if item.get_closest_marker("thorough")]
        items[:] = [item for item in items if not item.get_closest_marker("thorough")]
        config.hook.pytest_deselected(items=later)


@pytest.hookimpl(wrapper=True)
def pytest_collection() -> Generator[None, object, object]:
    """What is gathered stays, and is not searched for rubbish while it grows."""
    gc.disable()
    try:
        return (yield)
    finally:
        gc.enable()


def pytest_collection_finish() -> None:
    """Thousands of tests stay to the end: no search for rubbish looks through them again."""
    gc.collect()
    gc.freeze()
    gc.set_threshold(BETWEEN_COLLECTIONS, 20, 100)


def pytest_configure(config: pytest.Config) -> None:
    multiprocessing.set_forkserver_preload(["tests.support.loaded"])
    settings.load_profile("thorough" if config.getoption("--thorough") else "bank")
    if config.getoption("--thorough"):
        os.environ[THOROUGH] = "1"
    let_programs_hear()
    do_not_wait()
    if not hasattr(config, "workerinput"):
        # So that plain `pytest` finds the same programs; the workers inherit what is set here.
        # What pytest reads of a terminal is none, so whoever sits there could not be asked.
        os.environ.update(tools(may_install=False).environment())
        # What tests start is run by this very Python, not set up first and run by another.
        os.environ[INSIDE] = "1"


def let_programs_hear() -> None:
    """What tests start can be ended by a signal also where the tests themselves run deaf to it.

    A signal that is ignored, as below `nohup`, stays so in what is started; one that is heard and
    passed over does not.
    """
    for name in ("SIGINT", "SIGHUP", "SIGTERM"):
        number = getattr(signal, name, None)
        if number is not None and signal.getsignal(number) is signal.SIG_IGN:
            signal.signal(number, lambda *_: None)


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """One browser a worker: a second one beside it would not start."""
    with launched() as found:
        yield found


@pytest.fixture(scope="session")
def thorough(pytestconfig: pytest.Config) -> bool:
    """Whether this is the long run, `python3 build_tools test --thorough`."""
    return bool(pytestconfig.getoption("--thorough"))
