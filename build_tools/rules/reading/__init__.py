"""Lessons that can be read in the morning and taught the same day."""
