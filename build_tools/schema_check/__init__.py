"""Documents against the schemas, with the complaints in the author's words."""
