"""What stands in a word-processor file, as the bytes of one."""
