"""How big a storage tank."""
