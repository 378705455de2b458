"""A site as rows."""
