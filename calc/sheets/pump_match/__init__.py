"""Which pump suits this pipe."""
