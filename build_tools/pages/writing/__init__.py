"""How to write a unit."""
