"""The page for who has never taught dance."""
