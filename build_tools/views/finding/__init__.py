"""How a unit is found: the words it may be looked up by, and the choices that narrow a search."""
