"""What is written in a unit and where: each text with its place, and what has been said by then."""
