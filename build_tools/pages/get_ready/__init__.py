"""The page Get ready and its parts."""
