"""Which cable."""
