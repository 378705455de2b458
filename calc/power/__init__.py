"""Power: cable, panels, controller, battery, motor and the year hour by hour."""
