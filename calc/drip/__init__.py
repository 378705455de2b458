"""Gardens and fields on drip: what plants need, and what a line of many outlets gives."""
