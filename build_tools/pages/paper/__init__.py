"""What is made for paper: handouts, sheet, booklet."""
