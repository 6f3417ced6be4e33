"""Personal data."""
