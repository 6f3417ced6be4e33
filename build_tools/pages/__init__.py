"""A folder for each page, and one of the same name in site_overrides/ for how it looks and works.

A context is a dataclass with every field explained; nothing here opens files. What several pages
have is in a folder named for what it is: frame, pieces, hall.
"""
