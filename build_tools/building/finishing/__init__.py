"""What is made of finished pages: bound, kept as one file, printed. Nothing here knows dance."""
