"""How lessons follow one another: found, fixed, developed, joined, rehearsed, shown."""
