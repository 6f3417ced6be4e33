"""What we start ends when we end. Standard library alone: the starter needs it before set-up."""
