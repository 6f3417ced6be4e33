"""What comes before and after a unit."""
