"""The page on every move and its parts."""
