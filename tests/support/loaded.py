"""Loaded once by the process that others are forked from, so that each need not load it again."""

from __future__ import annotations

from build_tools.building import pack, site
from build_tools.publishing import publish, roll_back
from build_tools.rules.catalogue import all_rules
from build_tools.use_cases import compare, judging_packs
from tests.support.quick_disk import do_not_wait

LOADED = (pack, site, publish, roll_back, compare, judging_packs, all_rules())
do_not_wait()
