"""Many questions worked out at once, as records for JSON and cells for CSV: no input or output.

``calc.__main__`` reads, spreads and writes.  No page asks this room; it stays out of the browser.
"""
