"""What release 0.1.0 answered and read, kept as data: see README.md."""
