"""What was found, as text for people and as data for programs."""
