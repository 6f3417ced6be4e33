"""The unit on one side of paper."""
