"""A unit of an earlier format as one of this: what is certain is rewritten, the rest is named."""
