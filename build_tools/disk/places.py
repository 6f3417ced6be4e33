"""Where this software and its project lie."""

from __future__ import annotations

from pathlib import Path

PACKAGE = Path(__file__).resolve().parents[1]
"""The folder of this software."""
PROJECT = PACKAGE.parent
"""The folder of the project: its content, its schemas, its locks."""
OVERRIDES = PROJECT / "site_overrides"
"""The folder of the pages' templates, styles and scripts, a folder for each page."""
