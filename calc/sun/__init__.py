"""The sun: where it stands, what of it reaches a panel, and seeded years of it."""
