"""What an author need not write: lists in one line, and fields that follow from the others."""
