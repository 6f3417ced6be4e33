"""Pages as the preview gives them: what each file is, and pages with the preview's scripts."""

from __future__ import annotations

from pathlib import Path
from urllib.parse import unquote_to_bytes

OWN = Path(__file__).with_name("page")
"""The folder of the preview's own scripts and style."""
SCRIPTS = (
    "preview-form.js",
    "preview-fields.js",
    "preview-picture.js",
    "preview-marks.js",
    "preview-sentences.js",
    "preview.js",
)
"""In the order in which a page loads them: each uses those before it."""
STYLE = "preview.css"
KINDS = {
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
_POLICY, _ASKING = b"script-src 'self'", b"script-src 'self'; connect-src 'self'"
"""What a page with scripts allows, and the same with asking this server for the state."""


def own_file(name: str) -> bytes | None:
    """One of the preview's own scripts, or its style; None where it is none of them."""
    return (OWN / name).read_bytes() if name in (*SCRIPTS, STYLE) else None


def kind_of(name: str) -> str:
    """What a browser takes a file of that name for."""
    return KINDS.get(Path(name).suffix.lower(), "application/octet-stream")


def inside(target: str) -> str | None:
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


def with_scripts(page: bytes, name: str) -> bytes:
    """The page with the preview's scripts, where it is one that allows scripts."""
    if _POLICY not in page:
        return page
    up = "../" * name.count("/")
    tags = "".join(f'<script defer src="{up}{script}"></script>' for script in SCRIPTS)
    return page.replace(_POLICY, _ASKING, 1).replace(b"</head>", f"{tags}</head>".encode(), 1)
