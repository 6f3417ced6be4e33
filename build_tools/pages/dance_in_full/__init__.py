"""The page on the dance in full and its parts."""
