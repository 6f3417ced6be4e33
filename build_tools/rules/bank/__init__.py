"""Names, and what the unit refers to."""
