"""The front page, with the finder."""
