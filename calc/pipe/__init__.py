"""Pipes: what they are made of, what flows in them costs."""
