"""Units as they are written, from folders and packs, and the edition before each."""
