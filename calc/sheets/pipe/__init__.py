"""What size of pipe."""
