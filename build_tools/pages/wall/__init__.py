"""The lesson on the wall."""
