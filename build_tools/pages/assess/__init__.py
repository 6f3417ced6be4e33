"""The page Plan and assess and its parts."""
