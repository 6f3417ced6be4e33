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
from dataclasses import dataclass
from functools import partial
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any

from build_tools.building.preview.editor import Editor
from build_tools.building.preview.pages import KINDS, inside, kind_of, own_file, with_scripts
from build_tools.building.preview.pictures import TOO_LARGE, Pictures
from build_tools.building.preview.state import State
from build_tools.source.media_read import MOST_PICTURE

STATE = "preview-state.json"
TEXTS, PARTS, THINGS = "preview-texts", "preview-parts", "preview-things"
NOTES = "preview-notes"
"""What can be changed on a page of a file: its texts; its words, numbers and lists; its fields;
its notes."""
CHANGE, SET, MOVE, UNDO = "preview-change", "preview-set", "preview-move", "preview-undo"
"""A text, a value and a part of a list changed, and the last change undone."""
FIELD = "preview-field"
"""A field put in or taken out."""
PICTURE, ENTER, KEPT = "preview-picture", "preview-enter", "preview-kept"
"""A picture dropped, entered with what was told of it, and shown until then."""
_BYTES = "application/octet-stream"
HERE = "127.0.0.1"
_MOST_ASKED = 20_000
_MOST = {PICTURE: MOST_PICTURE, NOTES: 400_000}
"""Bytes; those of notes, whose letters may have four each."""
_SECRET_BYTES = 16
_PATIENCE_SECONDS = 10.0
"""For a request that somebody begins and does not end."""
_ENDS_SECONDS = 0.1
_HEADERS = {
    "Cache-Control": "no-store",
    "Content-Security-Policy": "frame-ancestors 'none'",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Referrer-Policy": "no-referrer",
    "X-Content-Type-Options": "nosniff",
    "X-Frame-Options": "DENY",
}
_BEING_MADE = b"""<!doctype html>
<html lang="en-GB">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<meta http-equiv="refresh" content="2">
<title>The pages are being made</title>
<p>The pages are being made. The first time this takes a minute or two.</p>
<p>Wait: this page looks again by itself.</p>
</html>
"""
_LOST = "nothing here. Open the address that `watch` printed last: it is another each time"


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


def serve(folder: Path, port: int, state: State, content: Path | None = None) -> Preview:
    """Start serving `folder` on this machine alone; `port` 0 takes any free one.

    With the `content` folder that it was made of, that can be changed on the pages.
    """
    editor = Editor(content) if content else None
    pictures = Pictures(content, editor) if content and editor else None
    secret = secrets.token_urlsafe(_SECRET_BYTES)
    handler = partial(
        _Handler, folder=folder, state=state, secret=secret, editor=editor, pictures=pictures
    )
    server = _Server((HERE, port), handler)
    threading.Thread(target=server.serve_forever, args=(_ENDS_SECONDS,), daemon=True).start()
    return Preview(server, secret)


class _Handler(BaseHTTPRequestHandler):
    timeout = _PATIENCE_SECONDS
    server_version, sys_version = "preview", ""
    error_message_format, error_content_type = "%(code)d: %(message)s\n", KINDS[".txt"]

    def __init__(
        self,
        *given: Any,
        folder: Path,
        state: State,
        secret: str,
        editor: Editor | None,
        pictures: Pictures | None,
    ) -> None:
        self._folder, self._state, self._secret = folder, state, secret
        self._editor, self._pictures = editor, pictures
        super().__init__(*given)

    def do_GET(self) -> None:
        """Pages get the preview's script; the state is made anew at each call."""
        name = self._asked_for()
        if name is None:
            return
        if name == STATE:
            self._send(self._state.as_json(), KINDS[".json"])
        elif (own := own_file(name)) is not None:
            self._send(own, kind_of(name))
        elif self._pictures and name.startswith(f"{KEPT}/"):
            self._send_kept(name.partition("/")[2])
        elif self._editor and name.partition("/")[0] in (TEXTS, PARTS, THINGS, NOTES):
            asked, _, file = name.partition("/")
            ways = {TEXTS: self._editor.texts, PARTS: self._editor.parts,
                    THINGS: self._editor.things, NOTES: self._editor.notes}  # fmt: skip
            self._send(json.dumps(ways[asked](file)).encode(), KINDS[".json"])
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
        asked, _, rest = name.partition("/")
        dropped = asked == PICTURE
        kind = self.headers.get("Content-Type", "")
        length = self.headers.get("Content-Length", "")
        if not named or kind != (_BYTES if dropped else KINDS[".json"]):
            self.send_error(403, "only the preview's own pages are answered")
        elif not dropped and name not in (CHANGE, SET, MOVE, FIELD, NOTES, ENTER, UNDO):
            self.send_error(404, "no such page or file")
        elif not length.isdecimal() or int(length) > _MOST.get(asked, _MOST_ASKED):
            self.send_error(413, TOO_LARGE if dropped else "that is too long")
        elif dropped:
            self._take_picture(rest, self.rfile.read(int(length)))
        else:
            self._edit(name, self.rfile.read(int(length)))

    def _take_picture(self, where: str, data: bytes) -> None:
        """A picture dropped on the page of a file, both named in the address."""
        assert self._pictures is not None
        file, _, name = where.rpartition("/")
        status, answer = self._pictures.drop(file, name, data)
        self._send(json.dumps(answer).encode(), KINDS[".json"], status)

    def _send_kept(self, key: str) -> None:
        assert self._pictures is not None
        picture = self._pictures.kept(key)
        if picture is None:
            self.send_error(404, "no such page or file")
        else:
            self._send(picture.data, kind_of(f"picture.{picture.kind}"))

    def _edit(self, name: str, body: bytes) -> None:
        assert self._editor is not None
        assert self._pictures is not None
        try:
            asked = json.loads(body)
        except (ValueError, RecursionError):
            self.send_error(400, "that is no data")
            return
        editor = self._editor
        made = {CHANGE: editor.change, SET: editor.set, MOVE: editor.move, FIELD: editor.field,
                NOTES: editor.write_notes, ENTER: self._pictures.enter,
                UNDO: editor.undo}  # fmt: skip
        status, said = made[name](asked)
        file = asked.get("file") if isinstance(asked, dict) else None
        undo = editor.undoes(file) if isinstance(file, str) else ""
        self._send(json.dumps({"said": said, "undo": undo}).encode(), KINDS[".json"], status)

    def _asked_for(self) -> str | None:
        """The name below the secret, of a request that may be answered; else None, refused."""
        if not self._names_this_server():
            self.send_error(421, "this is not the server of that name")
            return None
        if not self._comes_from_here():
            self.send_error(403, "only the preview's own pages are answered")
            return None
        asked = inside(self.path)
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
            if self._state.being_made and path.suffix == ".html":
                self._send(_BEING_MADE, KINDS[".html"], 503)
                return
            self.send_error(404, "no such page or file")
            return
        page = with_scripts(data, name) if path.suffix == ".html" else data
        self._send(page, kind_of(path.name))

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
