"""What several sheets share."""
