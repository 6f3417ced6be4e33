"""A folder for each page: its context, template, style and scripts, under the page's own name.

A context is a dataclass with every field explained; nothing here opens files. What several pages
have is in a folder named for what it is: frame, pieces, hall, sums, playing.
"""
