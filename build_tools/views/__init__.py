"""Facts computed from the model, each a small dataclass, and diagrams as SVG text. Pure."""
