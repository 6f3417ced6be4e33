"""The dance itself: its sections, counts, parts and transitions."""
