"""What the units of a bank teach, seen together."""
