"""The list for who signs for a unit."""
