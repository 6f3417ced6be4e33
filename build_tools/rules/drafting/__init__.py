"""What an author has still to write."""
