"""From a checked bank to finished files: pages, packs and what is made of finished pages."""
