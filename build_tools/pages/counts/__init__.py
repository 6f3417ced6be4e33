"""The counts for the hall, to play and to download."""
