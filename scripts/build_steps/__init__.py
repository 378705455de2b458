"""The steps of scripts/build, each a small module; ``__main__`` runs them in order."""
