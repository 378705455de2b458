"""How big a battery: how long it carries, how long it lasts, and the kinds side by side."""
