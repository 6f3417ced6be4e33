"""What a lesson loads when a teacher says which hall it is: where the dance goes, as a script.

A page opened from a folder can load nothing else, and a lesson that nobody fits has no need of it.
"""

from __future__ import annotations

import json

from build_tools.model.unit import Unit
from build_tools.views.dance.floor_data import floor_data
from build_tools.views.dance.on_the_floor import in_a_hall


def floor_file(unit: Unit) -> dict[str, bytes]:
    """`floor.js` of the unit's folder, of which `sums/floor-room-to-dance.js` asks."""
    told = json.dumps(floor_data(unit, in_a_hall(unit)), ensure_ascii=False, separators=(",", ":"))
    return {f"units/{unit.slug}/floor.js": f"danceUnitBank.danceOnFloor={told};\n".encode()}
