"""What a sudden stop does."""
