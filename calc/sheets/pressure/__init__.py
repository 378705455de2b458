"""Pressure in every unit."""
