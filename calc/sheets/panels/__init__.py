"""How many panels, and what battery: a year of sun, battery and pump."""
