"""What is printed for the class."""
