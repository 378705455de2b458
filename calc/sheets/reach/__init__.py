"""Will it reach."""
