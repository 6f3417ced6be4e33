"""Finished lesson pages as one word-processor file, in the order of the page."""
