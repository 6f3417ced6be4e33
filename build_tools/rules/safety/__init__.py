"""Safety and care."""
