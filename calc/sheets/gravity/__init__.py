"""Will it run by gravity."""
