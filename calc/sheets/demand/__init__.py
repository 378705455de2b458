"""How much water."""
