"""What stands around the content of every page."""
