"""The words of dance."""
