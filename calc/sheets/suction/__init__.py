"""How deep a pump can draw from."""
