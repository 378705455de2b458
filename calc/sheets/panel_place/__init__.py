"""Where to put the panels: tilt, facing and what hides the sun."""
