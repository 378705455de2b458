"""How much a well can give."""
