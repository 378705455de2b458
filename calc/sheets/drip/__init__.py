"""Whether a garden on drip can be watered."""
