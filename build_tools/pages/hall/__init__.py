"""What the card and the wall share: their frame, and how they are used in a hall."""
