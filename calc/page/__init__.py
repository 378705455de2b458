"""What a sheet is and how it is shown; knows no sheet."""
