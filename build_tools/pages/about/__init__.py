"""The About page."""
