"""A word-processor file (.docx): what stands in it, in order, written and read within limits."""
