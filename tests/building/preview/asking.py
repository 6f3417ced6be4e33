"""What a page of the preview asks of its server, and what anybody else could."""

from __future__ import annotations

import json
import urllib.error
import urllib.request

from build_tools.building.preview.server import Preview
from tests.support.banks import BASE_UNIT

FILE = f"units/{BASE_UNIT}/lesson-1.md"
UNIT = f"units/{BASE_UNIT}/unit.md"

FROM_ELSEWHERE: tuple[dict[str, str], ...] = (
    {"Origin": ""},
    {"Origin": "null"},
    {"Origin": "http://127.0.0.1:1"},
    {"Origin": "https://example.org"},
    {"Host": "example.org"},
    {"Sec_Fetch_Site": "same-site"},
    {"Sec_Fetch_Site": "cross-site"},
    {"Content_Type": "text/plain"},
    {"Content_Type": "application/x-www-form-urlencoded"},
    {"Content_Type": "multipart/form-data; boundary=a"},
)
"""Headers of which one is not as the page itself sends them."""

SOONER = """
const later = window.setTimeout;
window.setTimeout = (act, wait, ...given) => later(act, wait === 1000 ? 100 : wait, ...given);
"""
"""Lets a page ask ten times as often what is new, and whatever else it waits for as it does."""


def post(preview: Preview, name: str, asked: object, **headers: str) -> tuple[int, str]:
    """The status and the words of the answer; a header of no letters is not sent."""
    status, body = sent(preview, name, json.dumps(asked).encode(), **headers)
    return status, json.loads(body)["said"] if status == 200 else body


def sent(preview: Preview, name: str, body: bytes, **headers: str) -> tuple[int, str]:
    """The status and the text of the answer to any bytes."""
    origin = preview.address.rsplit("/", 2)[0]
    lines = {"Origin": origin, "Content-Type": "application/json"}
    lines |= {name.replace("_", "-"): value for name, value in headers.items()}
    kept = {name: value for name, value in lines.items() if value}
    request = urllib.request.Request(preview.address + name, body, kept, method="POST")
    try:
        with urllib.request.urlopen(request, timeout=20) as answer:
            return answer.status, answer.read().decode()
    except urllib.error.HTTPError as refused:
        return refused.code, refused.read().decode()
