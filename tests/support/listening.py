"""A listener on the network: a proxy that notes all that a browser asks for, and gives nothing."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from functools import partial
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from typing import Any

_ITS_MAKERS = (".mozilla.org", ".mozilla.net", ".mozilla.com", ".firefox.com")
"""What a browser asks its makers for, whatever page is open."""


@dataclass(slots=True)
class Listener:
    """Where it listens, and what it was asked for."""

    port: int = 0
    heard: list[str] = field(default_factory=list)

    def asked_by_pages(self) -> list[str]:
        """All but what the browser asks its makers for by itself."""
        return [one for one in self.heard if not _host(one).endswith(_ITS_MAKERS)]


@contextmanager
def listening() -> Iterator[Listener]:
    """Listen as long as the block lasts."""
    found = Listener()
    with ThreadingHTTPServer(("127.0.0.1", 0), partial(_Noting, found)) as server:
        found.port = server.server_address[1]
        threading.Thread(target=server.serve_forever, args=(0.05,), daemon=True).start()
        try:
            yield found
        finally:
            server.shutdown()


class _Noting(BaseHTTPRequestHandler):
    def __init__(self, listener: Listener, *given: Any) -> None:
        self._listener = listener
        super().__init__(*given)

    def parse_request(self) -> bool:
        """Note whatever is asked for, in whatever way, and give nothing."""
        if super().parse_request():
            self._listener.heard.append(self.path)
            self.send_error(403)
        return False

    def log_message(self, *_: object) -> None:
        """Nothing is printed: what was asked for is noted."""


def _host(asked: str) -> str:
    return "." + asked.split("://")[-1].partition("/")[0].partition(":")[0]
