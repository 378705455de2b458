"""The block above the fields of a place, by which a reader fills them without typing 24 numbers.

It shows once ``docs/assets/places.js`` runs; script and style come only with such a form.
"""

from html import escape

from calc.sheets.parts.place import PLACE

MARK = "months"  # key of the field that a form with a place has


def above(sheet, key, base, flat):
    """{title of the group: HTML above its fields}; empty for a form without a place."""
    if all(entry.key != MARK for entry in sheet.fields):
        return {}
    figures = f"{base}figures.html" if flat else f"{base}figures/"
    return {PLACE: _block(key, base, figures)}


def _block(key, base, figures):
    files = escape(base)
    return (
        f'<link rel="stylesheet" href="{files}assets/places.css">'
        f'<script src="{files}assets/places.js" defer></script>'
        f'<div class="sl-places" data-sl-places hidden>{_town(key)}'
        '<div class="sl-places-ways">'
        '<button type="button" data-sl-places-device>Use this device’s position</button>'
        '<button type="button" data-sl-places-typed>Use the position below</button></div>'
        '<p class="sl-places-said" role="status" data-sl-places-said></p>'
        f"{_map()}{_file(key)}"
        '<p class="sl-help">Sun: NASA POWER and SSE; air: NASA POWER; towns: GeoNames. '
        f'<a href="{escape(figures)}">Where the figures come from</a></p></div>'
    )


def _town(key):
    return (
        f'<div class="sl-places-town"><label for="{key}-town">Find a town</label>'
        f'<span class="sl-help" id="{key}-town-help">Its name, then the state or country: '
        "“Taos, New Mexico”</span>"
        f'<input type="text" id="{key}-town" role="combobox" aria-autocomplete="list" '
        f'aria-expanded="false" aria-controls="{key}-towns" aria-describedby="{key}-town-help" '
        'autocomplete="off" spellcheck="false" data-sl-places-town>'
        f'<ul class="sl-places-list" id="{key}-towns" role="listbox" aria-label="Towns" hidden>'
        "</ul></div>"
    )


def _map():
    return (
        '<details class="sl-places-world" data-sl-places-world><summary>Touch a map of the world'
        '</summary><p class="sl-help">Touch your place: within about 100 km (60 miles). Without a '
        "pointer, enter latitude and longitude below and press “Use the position below”.</p>"
        '<div class="sl-world" data-sl-places-map></div></details>'
    )


def _file(key):
    return (
        f'<div class="sl-places-file"><label for="{key}-file">Open an hourly file</label>'
        f'<span class="sl-help" id="{key}-file-help">A year in TMY3 or EPW, or drop it here; it '
        "stays on this device</span>"
        f'<input type="file" id="{key}-file" '
        f'aria-describedby="{key}-file-help" data-sl-places-file></div>'
    )
