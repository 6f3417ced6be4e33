"""Facts about a lesson: its minutes, groups, space, showing, and what to get."""
