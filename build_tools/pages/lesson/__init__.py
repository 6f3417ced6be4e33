"""The lesson page, part by part."""
