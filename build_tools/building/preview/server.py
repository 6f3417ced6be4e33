"""The preview: built pages from this machine to this machine, with the problems beside them."""

from __future__ import annotations

import json
import threading
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

SCRIPT = "preview.js"
STATE = "preview-state.js"
_PREVIEW_JS = Path(__file__).with_name("preview.js")


class State:
    """What the open pages ask for: a number that grows when pages change, and the problems."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._number = 0
        self._problems = ""

    def say(self, problems: str) -> None:
        """Show `problems` beside the page."""
        with self._lock:
            self._problems = problems

    def rebuilt(self) -> None:
        """Let every open page load itself anew."""
        with self._lock:
            self._number += 1

    def script(self) -> bytes:
        """The state as a script that calls the page's own `bankPreview`."""
        with self._lock:
            data = json.dumps({"number": self._number, "problems": self._problems})
        return f"window.bankPreview({data});".encode()


def serve(folder: Path, port: int, state: State) -> ThreadingHTTPServer:
    """Start serving `folder` on this machine alone; `port` 0 takes any free one."""
    handler = partial(_Handler, state=state, directory=str(folder))
    server = ThreadingHTTPServer(("127.0.0.1", port), handler)
    threading.Thread(target=server.serve_forever, daemon=True).start()
    return server


class _Handler(SimpleHTTPRequestHandler):
    def __init__(self, *args: object, state: State, directory: str) -> None:
        self._state = state
        super().__init__(*args, directory=directory)  # type: ignore[arg-type]

    def do_GET(self) -> None:
        """Pages get the preview's script; the state is made anew at each call."""
        name = self.path.partition("?")[0].rpartition("/")[2]
        if name == STATE:
            self._send(self._state.script(), "text/javascript")
        elif name == SCRIPT:
            self._send(_PREVIEW_JS.read_bytes(), "text/javascript")
        elif name.endswith(".html") or not name:
            file = Path(self.translate_path(self.path))
            file = file / "index.html" if file.is_dir() else file
            if not file.is_file():
                self.send_error(404)
                return
            script = f'<script defer src="/{SCRIPT}"></script></head>'.encode()
            self._send(file.read_bytes().replace(b"</head>", script, 1), "text/html; charset=utf-8")
        else:
            super().do_GET()

    def _send(self, body: bytes, kind: str) -> None:
        self.send_response(200)
        self.send_header("Content-Type", kind)
        self.send_header("Content-Length", str(len(body)))
        self.send_header("Cache-Control", "no-store")
        self.end_headers()
        self.wfile.write(body)

    def log_message(self, *_: object) -> None:
        """The author reads problems in this window, not requests."""
