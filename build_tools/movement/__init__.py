"""The arithmetic of dance, pure: no lessons, no files, no pages."""
