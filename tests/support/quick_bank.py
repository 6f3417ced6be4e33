"""A bank checked again and again with one file changed: the sound files are read only once."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

import pytest

from build_tools.checking import check_bank as pipeline
from build_tools.checking.check_bank import UnitCheck, check_unit
from build_tools.problem import Grade, Problem
from build_tools.schema_check.check import check_document
from build_tools.shapes.schemas import Kind
from build_tools.source import folder
from build_tools.source.front_matter import Document, Reader, read_markdown


class QuickBank:
    """`check_folder` runs as it is; what it reads twice without a change is remembered."""

    def __init__(self, bank: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        self.bank = bank
        self.originals = {
            path.relative_to(bank).as_posix(): path.read_bytes()
            for path in sorted(bank.rglob("*"))
            if path.suffix in (".md", ".yml")
        }
        self._read: dict[str, Document | list[Problem]] = {}
        self._fits: dict[int, tuple[Document, list[Problem]]] = {}
        self._changed = ""
        self._checked: dict[tuple[str, tuple[tuple[str, Grade], ...]], UnitCheck] = {}
        monkeypatch.setattr(folder, "read_markdown", self._remember(read_markdown))
        for file, reader in list(folder.BANK_FILES.items()):
            monkeypatch.setitem(folder.BANK_FILES, file, self._remember(reader))
        monkeypatch.setattr(pipeline, "check_document", self._check_document)
        monkeypatch.setattr(pipeline, "check_unit", self._check_unit)

    def problems_with(self, file: str, raw: bytes) -> list[Problem]:
        """Every problem of the bank with `raw` as the content of `file`, which is put back."""
        path = self.bank / file
        self._changed = file
        try:
            path.write_bytes(raw)
            return list(pipeline.check_folder(self.bank).problems)
        finally:
            path.write_bytes(self.originals[file])
            unchanged = {id(document) for document in self._read.values()}
            self._fits = {key: fit for key, fit in self._fits.items() if key in unchanged}

    def _remember(self, reader: Reader) -> Reader:
        def read(file: str, raw: bytes) -> Document | list[Problem]:
            if self.originals.get(file) != raw:
                return reader(file, raw)
            if file not in self._read:
                self._read[file] = reader(file, raw)
            return self._read[file]

        return read

    def _check_unit(self, root: Path, slug: str, grades: Mapping[str, Grade]) -> UnitCheck:
        # what a unit is found to be hangs on its own files and on the bank's grades
        if self._changed.startswith(f"units/{slug}/"):
            return check_unit(root, slug, grades)
        key = (slug, tuple(sorted(grades.items())))
        if key not in self._checked:
            self._checked[key] = check_unit(root, slug, grades)
        return self._checked[key]

    def _check_document(self, document: Document, kind: Kind) -> list[Problem]:
        # the document is kept beside its problems, so that its id is not given to another
        if id(document) not in self._fits:
            self._fits[id(document)] = (document, check_document(document, kind))
        return list(self._fits[id(document)][1])
