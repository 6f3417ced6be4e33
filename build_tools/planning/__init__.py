"""A year of dance for one year group: which units, in which order."""
