"""A verified unit put into the bank: all of it or nothing, and nothing here lost for it."""
