"""The unit page and its parts."""
