"""What the bank teaches: the page for advisers over all units."""
