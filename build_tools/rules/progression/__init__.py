"""How lessons follow one another: found, fixed, joined, rehearsed, shown."""
