"""Off-grid pressurised water, worked out: SI inside, the reader's units at the edge."""

__version__ = "0.7.0"
