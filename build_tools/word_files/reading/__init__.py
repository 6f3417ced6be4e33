"""The bytes of anybody's word-processor file, as what stands in it."""
