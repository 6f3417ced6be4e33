"""How long and how hard a text is to read."""
