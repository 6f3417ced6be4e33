"""Loaded once by the process that others are forked from, so that each need not load it again."""

from __future__ import annotations

from build_tools.building import pack, site
from build_tools.rules.catalogue import all_rules
from build_tools.use_cases import compare, judging_packs

LOADED = (pack, site, compare, judging_packs, all_rules())
