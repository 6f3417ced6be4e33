"""The dance unit bank: check units of class dance, and publish them as a site."""
