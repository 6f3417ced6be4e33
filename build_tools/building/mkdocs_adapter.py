"""The one module that knows MkDocs: the bank as a plugin of it, and not a word of dance.

`mkdocs build` and `mkdocs serve` at the root give what `site` gives, byte for byte: the plugin
builds the site by the same function, and hands MkDocs each finished file. Nothing of the theme is
published, since its scripts and styles do not work under the pages' policy from a folder, and no
page that MkDocs makes by itself, since those hold absolute addresses.
"""

from __future__ import annotations

import logging
import os
from contextlib import ExitStack
from pathlib import Path
from typing import Literal

from mkdocs.config import config_options
from mkdocs.config.base import Config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import PluginError
from mkdocs.plugins import BasePlugin
from mkdocs.structure.files import File, Files, InclusionLevel

from build_tools.building.ready import ready_to_publish
from build_tools.building.site import Wanted, build_site
from build_tools.building.site_record import stamps_in
from build_tools.checking.quick_check import quick_check
from build_tools.checking.report_text import as_text, counted
from build_tools.disk.scratch import scratch

_POLICY, _SERVED = b"script-src 'self'", b"script-src 'self' 'unsafe-inline'; connect-src 'self'"
"""What a page allows, and the same with the script by which `mkdocs serve` loads pages anew."""
_log = logging.getLogger("mkdocs.plugins.dance-unit-bank")


class BankSettings(Config):  # type: ignore[no-untyped-call, unused-ignore]
    """What `mkdocs.yml` may say of the plugin."""

    content = config_options.Type(str, default="content")


class BankPlugin(BasePlugin[BankSettings]):
    """Brings the bank's pages, and watches its content."""

    def __init__(self) -> None:
        super().__init__()  # type: ignore[no-untyped-call, unused-ignore]
        self._rooms = ExitStack()
        self._room: Path | None = None
        self._served = False

    def on_startup(self, *, command: Literal["build", "gh-deploy", "serve"], dirty: bool) -> None:
        """A room for what is drawn: it stays from one build to the next, until MkDocs ends."""
        del dirty
        # The theme announces its end of life on every build; that is not for our readers.
        os.environ.setdefault("NO_MKDOCS_2_WARNING", "true")
        self._served = command == "serve"

    def on_shutdown(self) -> None:
        """The room goes."""
        self._rooms.close()
        self._room = None

    def on_config(self, config: MkDocsConfig) -> MkDocsConfig:
        """No navigation, no "not found" page and no map of the site."""
        config.nav = []
        config.theme.static_templates.clear()
        config.watch.append(str(self._content(config)))
        return config

    def on_files(self, _files: Files, *, config: MkDocsConfig) -> Files:
        """Every file of the site, and no other: what lies in the content is read, not copied."""
        room = self._drawn_in()
        site, content = room / "site", self._content(config)
        build_site(_wanted(content, room / "kept.json"), site, room / "kept.site")
        kind = _Served if self._served else File
        return Files([_file(kind, config, site, name) for name in sorted(stamps_in(site))])

    def _content(self, config: MkDocsConfig) -> Path:
        return (Path(config.config_file_path).parent / self.config.content).resolve()

    def _drawn_in(self) -> Path:
        if self._room is None:
            self._room = self._rooms.enter_context(scratch("mkdocs"))
        return self._room


class _Served(File):
    """A file whose page lets MkDocs' own script load it anew; only on this machine."""

    def copy_file(self, dirty: bool = False) -> None:
        """Write it below the folder that is served."""
        super().copy_file(dirty)
        if self.dest_uri.endswith(".html") and self.abs_dest_path:
            page = Path(self.abs_dest_path)
            page.write_bytes(page.read_bytes().replace(_POLICY, _SERVED, 1))


def _file(kind: type[File], config: MkDocsConfig, site: Path, name: str) -> File:
    path = str((site / name).absolute())
    return kind.generated(config, name, abs_src_path=path, inclusion=InclusionLevel.NOT_IN_NAV)


def _wanted(content: Path, kept: Path) -> Wanted:
    """What can be published of the folder; MkDocs is stopped where errors stand in the way."""
    report = quick_check(content, kept)
    ready = ready_to_publish(report, content)
    if ready.problems:
        _log.warning(as_text(ready.problems, f"{content.name}/"))
    if ready.wanted is None:
        raise PluginError(f"{counted(ready.problems)}; nothing was built")
    return ready.wanted
