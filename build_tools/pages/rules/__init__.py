"""The page of all rules."""
