"""The desk: what takes the answers of several sheets together, for one site."""
