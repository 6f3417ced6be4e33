"""Where every dancer is at every count: a class put down in a hall and moved through a dance."""
