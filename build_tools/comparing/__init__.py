"""What changed between two editions of a unit, in a reader's words."""
