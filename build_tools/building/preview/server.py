"""The preview: built pages from this machine to this machine, with the problems beside them.

Any page that is open in the author's browser may ask this machine for things, and so may any
program on it. So everything lies below a secret in the address, and of whoever knows it only the
preview's own pages are answered: the request has to name this very server (a name that a stranger
turned to this machine is another, which is called DNS rebinding) and may not come from another
page (Fetch Metadata Request Headers, W3C; RFC 6454 for Origin). No answer may be framed, or loaded
by a page from elsewhere as a picture, script or style (Cross-Origin-Resource-Policy, Fetch).
"""

from __future__ import annotations

import json
import secrets
import sys
import threading
from collections.abc import Iterable
from dataclasses import dataclass
from functools import partial
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any
from urllib.parse import unquote_to_bytes

from build_tools.building.preview.editor import Editor

SCRIPT = "preview.js"
STATE = "preview-state.json"
STYLE = "preview.css"
TEXTS, PARTS = "preview-texts", "preview-parts"
"""What can be changed on a page of a file: its texts; its words, numbers and lists."""
CHANGE, SET, MOVE, UNDO = "preview-change", "preview-set", "preview-move", "preview-undo"
"""A text, a value and a part of a list changed, and the last change undone."""
HERE = "127.0.0.1"
_PREVIEW_JS = Path(__file__).with_name("preview.js")
_PREVIEW_CSS = Path(__file__).with_name("preview.css")
_MOST_ASKED = 20_000
_SECRET_BYTES = 16
_PATIENCE_SECONDS = 10.0
"""For a request that somebody begins and does not end."""
_ENDS_SECONDS = 0.1
_KINDS = {
    ".html": "text/html; charset=utf-8",
    ".css": "text/css; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".json": "application/json",
    ".svg": "image/svg+xml",
    ".png": "image/png",
    ".jpg": "image/jpeg",
    ".jpeg": "image/jpeg",
    ".webp": "image/webp",
    ".mp3": "audio/mpeg",
    ".woff2": "font/woff2",
    ".txt": "text/plain; charset=utf-8",
}
"""What a browser takes each file for; systems keep lists of their own, some of them wrong."""
_HEADERS = {
    "Cache-Control": "no-store",
    "Content-Security-Policy": "frame-ancestors 'none'",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Referrer-Policy": "no-referrer",
    "X-Content-Type-Options": "nosniff",
    "X-Frame-Options": "DENY",
}
_POLICY, _ASKING = b"script-src 'self'", b"script-src 'self'; connect-src 'self'"
"""What a page with scripts allows, and the same with asking this server for the state."""
_LOST = "nothing here. Open the address that `watch` printed last: it is another each time"


class State:
    """What the open pages ask for: a number that grows when pages change, and the problems."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._number = 0
        self._problems = ""
        self._marks: list[dict[str, Any]] = []
        self._older: list[str] = []

    def say(self, problems: str, marks: Iterable[dict[str, Any]] = ()) -> None:
        """Show `problems` in the bar, and each of `marks` beside its place on its page."""
        with self._lock:
            self._problems, self._marks = problems, list(marks)

    def rebuilt(self) -> None:
        """Let every open page load itself anew."""
        with self._lock:
            self._number += 1

    def older(self, units: Iterable[str]) -> None:
        """Say on the pages of these units that they are older than the files."""
        with self._lock:
            self._older = sorted(units)

    def as_json(self) -> bytes:
        """The state as the pages read it."""
        with self._lock:
            return json.dumps(
                {
                    "number": self._number,
                    "problems": self._problems,
                    "marks": self._marks,
                    "older": self._older,
                }
            ).encode()


class _Server(ThreadingHTTPServer):
    # On Windows this would let another program take the port of a running preview.
    allow_reuse_address = sys.platform != "win32"

    def handle_error(self, *given: Any) -> None:
        """A browser that goes away in the middle of an answer is nothing to tell an author of."""
        if not isinstance(sys.exception(), OSError):
            super().handle_error(*given)


@dataclass(frozen=True, slots=True)
class Preview:
    """A running preview: its server, and the secret that every address of it starts with."""

    server: _Server
    secret: str

    @property
    def address(self) -> str:
        """Where the front page is, without its name."""
        return f"http://{HERE}:{self.server.server_port}/{self.secret}/"

    def stop(self) -> None:
        """Answer no more, and let the port go."""
        self.server.shutdown()
        self.server.server_close()


def serve(folder: Path, port: int, state: State, editor: Editor | None = None) -> Preview:
    """Start serving `folder` on this machine alone; `port` 0 takes any free one.

    With an `editor`, texts can be changed on the pages.
    """
    secret = secrets.token_urlsafe(_SECRET_BYTES)
    handler = partial(_Handler, folder=folder, state=state, secret=secret, editor=editor)
    server = _Server((HERE, port), handler)
    threading.Thread(target=server.serve_forever, args=(_ENDS_SECONDS,), daemon=True).start()
    return Preview(server, secret)


class _Handler(BaseHTTPRequestHandler):
    timeout = _PATIENCE_SECONDS
    server_version, sys_version = "preview", ""
    error_message_format, error_content_type = "%(code)d: %(message)s\n", _KINDS[".txt"]

    def __init__(
        self, *given: Any, folder: Path, state: State, secret: str, editor: Editor | None
    ) -> None:
        self._folder, self._state, self._secret, self._editor = folder, state, secret, editor
        super().__init__(*given)

    def do_GET(self) -> None:
        """Pages get the preview's script; the state is made anew at each call."""
        name = self._asked_for()
        if name is None:
            return
        if name == STATE:
            self._send(self._state.as_json(), _KINDS[".json"])
        elif name == SCRIPT:
            self._send(_PREVIEW_JS.read_bytes(), _KINDS[".js"])
        elif name == STYLE:
            self._send(_PREVIEW_CSS.read_bytes(), _KINDS[".css"])
        elif self._editor and name.startswith(f"{TEXTS}/"):
            found = self._editor.texts(name.removeprefix(f"{TEXTS}/"))
            self._send(json.dumps(found).encode(), _KINDS[".json"])
        elif self._editor and name.startswith(f"{PARTS}/"):
            parts = self._editor.parts(name.removeprefix(f"{PARTS}/"))
            self._send(json.dumps(parts).encode(), _KINDS[".json"])
        else:
            self._send_file(name)

    def do_POST(self) -> None:
        """A text changed on a page, or the last change undone: asked for by that page alone."""
        if self._editor is None:
            self.send_error(501, "pages are only read here")
            return
        name = self._asked_for()
        if name is None:
            return
        # a browser names the page's origin with every POST; whoever does not is no page of ours
        named = self.headers.get_all("Origin", []) and self._comes_from_here()
        kind = self.headers.get("Content-Type", "")
        length = self.headers.get("Content-Length", "")
        if not named or kind != _KINDS[".json"]:
            self.send_error(403, "only the preview's own pages are answered")
        elif name not in (CHANGE, SET, MOVE, UNDO):
            self.send_error(404, "no such page or file")
        elif not length.isdecimal() or int(length) > _MOST_ASKED:
            self.send_error(413, "that is too long")
        else:
            self._edit(name, self.rfile.read(int(length)))

    def _edit(self, name: str, body: bytes) -> None:
        assert self._editor is not None
        try:
            asked = json.loads(body)
        except (ValueError, RecursionError):
            self.send_error(400, "that is no data")
            return
        editor = self._editor
        made = {CHANGE: editor.change, SET: editor.set, MOVE: editor.move}
        status, said = editor.undo() if name == UNDO else made[name](asked)
        self._send(json.dumps({"said": said}).encode(), _KINDS[".json"], status)

    def _asked_for(self) -> str | None:
        """The name below the secret, of a request that may be answered; else None, refused."""
        if not self._names_this_server():
            self.send_error(421, "this is not the server of that name")
            return None
        if not self._comes_from_here():
            self.send_error(403, "only the preview's own pages are answered")
            return None
        asked = _inside(self.path)
        if asked is None:
            self.send_error(400, "no address that a page could have")
            return None
        secret, slash, name = asked.partition("/")
        if not secrets.compare_digest(secret.encode(), self._secret.encode()) or not slash:
            self.send_error(404, _LOST)
            return None
        return name

    def _names_this_server(self) -> bool:
        said = self.headers.get_all("Host", [])
        ours = {f"{name}:{self.connection.getsockname()[1]}" for name in (HERE, "localhost")}
        return len(said) == 1 and said[0].lower() in ours

    def _comes_from_here(self) -> bool:
        """Whether the author or a page of ours asks; browsers tell it, and other programs need not.

        A page on another port of this machine is called of the same site, so that is not enough.
        """
        [host] = self.headers.get_all("Host", [])
        origins = self.headers.get_all("Origin", [])
        site = self.headers.get_all("Sec-Fetch-Site", ["none"])
        return set(origins) <= {f"http://{host}"} and set(site) <= {"none", "same-origin"}

    def _send_file(self, name: str) -> None:
        path = self._folder / (f"{name}index.html" if name.endswith("/") or not name else name)
        try:
            data = path.read_bytes()
        # It may be a folder, of a name too long for the system, or a file just written anew.
        except OSError:
            self.send_error(404, "no such page or file")
            return
        kind = _KINDS.get(path.suffix.lower(), "application/octet-stream")
        self._send(_with_script(data, name) if path.suffix == ".html" else data, kind)

    def _send(self, body: bytes, kind: str, status: int = 200) -> None:
        self.send_response(status)
        self.send_header("Content-Type", kind)
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        self.wfile.write(body)

    def end_headers(self) -> None:
        """Every answer, a refusal too, is for the preview's own pages alone."""
        for name, value in _HEADERS.items():
            self.send_header(name, value)
        super().end_headers()

    def log_message(self, *_: object) -> None:
        """The author reads problems in this window, not requests."""


def _inside(target: str) -> str | None:
    """The path that a request asks for, with `/`, or None where no page can have such an address.

    It stays inside the folder: it holds no part that leads upwards, and nothing that a system
    takes for a place of its own, such as `C:`.
    """
    try:
        path = unquote_to_bytes(target.partition("?")[0]).decode("utf-8")
    except UnicodeDecodeError:
        return None
    parts = path.split("/")
    if parts[0] or not all(parts[1:-1]) or not path.isprintable():
        return None
    if any(part in (".", "..") or set(part) & {"\\", ":"} for part in parts):
        return None
    return path[1:]


def _with_script(page: bytes, name: str) -> bytes:
    """The page with the preview's script, where it is one that allows scripts."""
    if _POLICY not in page:
        return page
    script = f'<script defer src="{"../" * name.count("/")}{SCRIPT}"></script></head>'
    return page.replace(_POLICY, _ASKING, 1).replace(b"</head>", script.encode(), 1)
