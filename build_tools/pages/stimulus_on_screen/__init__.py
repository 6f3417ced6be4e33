"""The page that shows what a dance starts from."""
