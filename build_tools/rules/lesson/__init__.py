"""One lesson: its minutes and its steps."""
