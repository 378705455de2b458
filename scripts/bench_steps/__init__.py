"""What scripts/bench measures. Ratios only: a time says little on another machine."""
