"""A good pack as files, changed piece by piece and closed again with its sums right."""

# fmt: off

from __future__ import annotations

import base64
import hashlib
import io
import json
import re
import zipfile
import zlib
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from tests.packs.attacks.zips import DEFLATED, KB, STORED, Entry, deflate_fill, write_zip


class Pack:
    def __init__(self, root: str, files: dict[str, bytes]) -> None:
        self.root = root
        self.files = dict(files)

    @classmethod
    def read(cls, data: bytes) -> Pack:
        z = zipfile.ZipFile(io.BytesIO(data))
        root = z.namelist()[0].split("/")[0]
        return cls(root, {n[len(root) + 1:]: z.read(n) for n in z.namelist() if not n.endswith(
            "/")})

    def copy(self) -> Pack:
        return Pack(self.root, self.files)


    @property
    def slug(self) -> str:
        return str(json.loads(self.files["data/about.json"])["unit"])

    def about(self) -> dict[str, Any]:
        told: dict[str, Any] = json.loads(self.files["data/about.json"])
        return told

    def text(self, name: str) -> str:
        return self.files[name].decode("utf-8")

    @property
    def unit(self) -> str:
        return self.text("data/unit/unit.md")

    def drawing(self) -> str:
        return sorted(n for n in self.files if n.startswith("data/unit/media/") and n.endswith(
            ".svg"))[0]

    def lessons(self) -> list[str]:
        return sorted(n for n in self.files if re.fullmatch(r"data/unit/lesson-\d+\.md", n))

    def pages(self) -> list[str]:
        return sorted(n for n in self.files if n.startswith("data/pages/"))


    def in_root(self, root: str) -> Pack:
        self.root = root
        return self

    def put(self, name: str, data: Any) -> Pack:
        self.files[name] = data if isinstance(data, bytes) else data.encode("utf-8",
            "surrogatepass")
        return self

    def sub(self, name: str, pattern: str, new: str, count: int = 1, flags: Any = re.M) -> Pack:
        old = self.text(name)
        made, n = re.subn(pattern, lambda _: new, old, count=count, flags=flags)
        if not n:
            raise LookupError(f"{pattern!r} is not in {name}")
        return self.put(name, made)

    def split(self, name: str) -> tuple[str, str]:
        t = self.text(name)
        at = t.index("\n---\n", 4) + 5
        return t[:at], t[at:]

    def notes(self, text: str, name: str = "data/unit/unit.md", keep: bool = False) -> Pack:
        front, old = self.split(name)
        return self.put(name, front + ((old.rstrip("\n") + "\n\n") if keep else "") + text)

    def front(self, key: str, value: str, name: str = "data/unit/unit.md") -> Pack:
        """The top-level (or first) line 'key: ...' gets this raw value."""
        front, rest = self.split(name)
        m = re.search(rf"^([ -]*){re.escape(key)}:(?: .*)?$", front, re.M)
        if not m:
            raise LookupError(key)
        return self.put(name, front[:m.start()] + f"{m.group(1)}{key}: {value}" + front[m.end():] +
            rest)

    def add_front(self, block: str, name: str = "data/unit/unit.md") -> Pack:
        front, rest = self.split(name)
        return self.put(name, front[:-4] + block.rstrip("\n") + "\n---\n" + rest)

    def set_about(self, **kw: Any) -> Pack:
        a = self.about()
        a.update(kw)
        return self.put("data/about.json", json.dumps(a, indent=2, ensure_ascii=False) + "\n")

    def set_title(self, title: str) -> Pack:
        old = self.about()["title"]
        self.set_about(title=title)
        self.front("title", json.dumps(title))
        flat = title.replace("\r", " ").replace("\n", " ")
        for n in ("data/credits.txt", "bag-info.txt"):
            self.put(n, self.text(n).replace(old, flat, 1))
        self._jsonld(lambda d: d.update(name=title, creditText=d["creditText"].replace(old, title)))
        return self

    def set_publisher(self, name: str) -> Pack:
        old = self.about()["publisher"]
        self.set_about(publisher=name)
        self.front("publisher", json.dumps(name))
        flat = name.replace("\r", " ").replace("\n", " ")
        self.put("data/credits.txt", self.text("data/credits.txt").replace("Publisher: " + old,
            "Publisher: " + flat))
        self.put("bag-info.txt", self.text("bag-info.txt").replace("Source-Organization: " + old,
            "Source-Organization: " + flat))
        self._jsonld(lambda d: (d["publisher"].update(name=name), d.update(creditText=d[
            "creditText"].replace(old, name))))
        return self

    def set_edition(self, edition: str, issued: str | None = None) -> Pack:
        a = self.about()
        old, old_issued = a["edition"], a["issued"]
        issued = issued or old_issued
        self.set_about(edition=edition, issued=issued)
        self.front("edition", edition)
        self.front("issued", issued)
        self.root = f"{a['unit']}-{edition}"
        self.put("data/credits.txt", self.text("data/credits.txt").replace(
            f"Edition: {old}, {old_issued}", f"Edition: {edition}, {issued}"))
        self.put("bag-info.txt", self.text("bag-info.txt").replace(f"{a['unit']}-{old}", self.root)
            .replace(f"Bagging-Date: {old_issued}", f"Bagging-Date: {issued}"))
        self._jsonld(lambda d: d.update(version=edition, datePublished=issued))
        for n in self.pages():
            self.put(n, self.text(n).replace(f"dition {old}", f"dition {edition}"))
        return self

    def set_slug(self, slug: str, root: str | None = None) -> Pack:
        a = self.about()
        self.set_about(unit=slug)
        self.put("bag-info.txt", self.text("bag-info.txt").replace(f"{a['unit']}-{a['edition']}",
            f"{slug}-{a['edition']}"))
        for n in self.pages():
            self.put(n, self.text(n).replace(f'data-unit="{a["unit"]}"', f'data-unit="{slug}"'))
        self.root = root if root is not None else f"{slug}-{a['edition']}"
        return self

    def _jsonld(self, change: Any) -> None:
        d = json.loads(self.files["data/metadata.jsonld"])
        change(d)
        self.put("data/metadata.jsonld", json.dumps(d, indent=2, ensure_ascii=False) + "\n")

    def set_drawing(self, data: Any) -> Pack:
        """The first drawing becomes this; the page that shows it too, when it is small."""
        name = self.drawing()
        old = base64.b64encode(self.files[name]).decode()
        self.put(name, data)
        new = self.files[name]
        if len(new) < 200 * KB:
            for n in self.pages():
                self.put(n, self.text(n).replace(old, base64.b64encode(new).decode()))
        return self

    def set_picture(self, data: bytes, ending: str, mime: str | None = None, stem: str | None =
        None) -> Pack:
        """In place of the first drawing, a picture (same title, text version and credits)."""
        name = self.drawing()
        old = base64.b64encode(self.files.pop(name)).decode()
        short = name[len("data/unit/"):]
        new = f"media/{stem or Path(name).stem}{ending}"
        self.put("data/unit/" + new, data)
        for n in ("data/unit/unit.md", "data/credits.txt"):
            self.put(n, self.text(n).replace(short, new))
        mime = mime or {".png": "image/png", ".jpg": "image/jpeg", ".jpeg": "image/jpeg", ".gif":
            "image/gif", ".webp": "image/webp"}.get(ending.lower(), "image/png")
        if len(data) < 200 * KB:
            for n in self.pages():
                self.put(n, self.text(n).replace(f"data:image/svg+xml;base64,{old}",
                    f"data:{mime};base64,{base64.b64encode(data).decode()}"))
        return self


    def payload(self) -> dict[str, bytes]:
        return {n: d for n, d in self.files.items() if n.startswith("data/")}

    def rehash(self, algorithms: Any = ("sha512",), oxum: Any = True, extra_lines: str = "", sep:
        Any = "  ") -> Pack:
        pay = self.payload()
        if oxum and "bag-info.txt" in self.files:
            info = self.files["bag-info.txt"]
            info = re.sub(rb"Payload-Oxum: [0-9.]+", b"Payload-Oxum: %d.%d" % (sum(map(len,
                pay.values())), len(pay)), info)
            self.files["bag-info.txt"] = info
        for a in algorithms:
            lines = [f"{hashlib.new(a, d).hexdigest()}{sep}{enc(n)}\n" for n, d in sorted(pay.items(
                ))]
            self.put(f"manifest-{a}.txt", "".join(lines) + extra_lines)
        return self.retag(algorithms)

    def retag(self, algorithms: Any = ("sha512",)) -> Pack:
        tags = {n: d for n, d in self.files.items() if not n.startswith("data/") and not re.match(
            r"tagmanifest-", n)}
        for a in algorithms:
            self.put(f"tagmanifest-{a}.txt", "".join(f"{hashlib.new(a, d).hexdigest()}  {enc(n)}\n"
                for n, d in sorted(tags.items())))
        return self

    def entries(self, method: Any = STORED) -> list[Entry]:
        return [Entry(f"{self.root}/{n}", d, STORED if method == STORED or len(d) < 64 else method)
            for n, d in sorted(self.files.items())]

    def zip(self, method: Any = STORED, **kw: Any) -> bytes:
        return write_zip(self.entries(method), **kw)

    def done(self, method: Any = STORED, **kw: Any) -> bytes:
        return self.rehash().zip(method, **kw)


def enc(path: str) -> str:
    """A path as RFC 8493 writes it in a manifest: only CR, LF and % are encoded."""
    return path.replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A")


class Bomb:
    """A payload file of a huge size, made in pieces and never held."""

    stream: bytes
    crc: int
    length: int

    def __init__(self, head: Any = b"", fill: Any = b"\0", size: Any = 0, tail: Any = b"") -> None:
        self.head, self.fill, self.size, self.tail = head, fill, size, tail
        self.stream, self.crc, self.length = deflate_fill(fill, size // len(fill) * len(fill), head,
            tail) if len(fill) == 1 else self._slow()
        self.sha = self._sha()

    def _pieces(self) -> Iterator[bytes]:
        yield self.head
        block = self.fill * max(1, (1 << 20) // len(self.fill))
        left = self.size
        while left > 0:
            yield block[:left] if left < len(block) else block
            left -= len(block)
        yield self.tail

    def _slow(self) -> Any:
        c = zlib.compressobj(9, zlib.DEFLATED, -15)
        out, crc, n = [], 0, 0
        for p in self._pieces():
            out.append(c.compress(p))
            crc = zlib.crc32(p, crc)
            n += len(p)
        out.append(c.flush())
        return b"".join(out), crc, n

    def _sha(self) -> Any:
        h = hashlib.sha512()
        for p in self._pieces():
            h.update(p)
        return h.hexdigest()

    def entry(self, name: str, **kw: Any) -> Entry:
        return Entry(name, b"", DEFLATED, raw=self.stream, crc=self.crc, usize=self.length, **kw)


def with_bombs(p: Pack, bombs: dict[str, Bomb], **kw: Any) -> bytes:
    """A sound bag with these bombs as payload (or tag) files."""
    for n in bombs:
        p.files.pop(n, None)
    pay = p.payload()
    total = sum(map(len, pay.values())) + sum(b.length for n, b in bombs.items() if n.startswith(
        "data/"))
    count = len(pay) + sum(n.startswith("data/") for n in bombs)
    p.files["bag-info.txt"] = re.sub(rb"Payload-Oxum: [0-9.]+", b"Payload-Oxum: %d.%d" % (total,
        count), p.files["bag-info.txt"])
    digests = {n: hashlib.sha512(d).hexdigest() for n, d in pay.items()}
    digests.update({n: b.sha for n, b in bombs.items() if n.startswith("data/")})
    if "manifest-sha512.txt" not in bombs:
        p.put("manifest-sha512.txt", "".join(f"{digests[n]}  {enc(n)}\n" for n in sorted(digests)))
    tags = {n: hashlib.sha512(d).hexdigest() for n, d in p.files.items() if not n.startswith(
        "data/") and not n.startswith("tagmanifest-")}
    tags.update({n: b.sha for n, b in bombs.items() if not n.startswith("data/")})
    p.put("tagmanifest-sha512.txt", "".join(f"{tags[n]}  {enc(n)}\n" for n in sorted(tags)))
    entries = p.entries() + [b.entry(f"{p.root}/{n}") for n, b in bombs.items()]
    return write_zip(sorted(entries, key=lambda e: e.name), **kw)
