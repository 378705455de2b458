"""How big a pressure tank."""
