"""Fields as people type them, read by the shape of the file: what is meant, and what is unclear.

YAML comes first: a file that it reads, and that fits its schema, is never read here, but for a
number sign in a text. What is read here is read by what the schema allows at each place.
"""
