"""The views for the hall: the card and the wall."""
