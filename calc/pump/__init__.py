"""Pumps: their curves, laws, sets and tables."""
