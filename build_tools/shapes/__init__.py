"""What the schemas say each place of a file takes, for reading it and for judging it."""
