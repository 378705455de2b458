"""The command line and what it hands over."""
