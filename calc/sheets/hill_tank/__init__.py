"""Is the hill tank empty by evening."""
