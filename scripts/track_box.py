"""The block above a table of points along a pipe, into which a reader pastes a track or a table.

It shows once ``docs/assets/track.js`` runs; script and style come only with such a form.
"""

from html import escape

FIELD = "profile"  # key of the table that a form with points has


def above(sheet, key, base):
    """{title of the group: HTML above its fields}; empty for a form without points."""
    return {one.group: _block(key, escape(base)) for one in sheet.fields if one.key == FIELD}


def _block(key, files):
    return (
        f'<link rel="stylesheet" href="{files}assets/places.css">'
        f'<script src="{files}assets/track.js" defer></script>'
        '<div class="sl-places" data-sl-track hidden><div class="sl-places-file">'
        f'<label for="{key}-track">Paste a GPS track or a table</label>'
        f'<span class="sl-help" id="{key}-track-help">GPX with heights, or two columns: distance '
        "along the pipe, height. You can drop a file here; it stays on this device</span>"
        f'<textarea id="{key}-track" rows="3" aria-describedby="{key}-track-help" '
        'autocomplete="off" spellcheck="false" data-sl-track-text></textarea></div>'
        '<div class="sl-places-ways">'
        '<button type="button" data-sl-track-read>Fill in the points</button></div>'
        '<p class="sl-places-said" role="status" data-sl-track-said></p></div>'
    )
