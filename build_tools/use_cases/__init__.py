"""What people ask of the bank, a module each: they take values, give values, and print nothing."""
