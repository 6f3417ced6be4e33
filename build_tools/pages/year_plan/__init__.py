"""The plan of a year, as a page."""
