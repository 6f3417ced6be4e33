"""The lesson as a card for the hand."""
