"""Print the page of checks: every value that calc is held to, worked out as the page is made.

The table is tests/reference/checks; what is told apart from it stands in docs/checks.md.
"""

from collections import Counter

TOTALS, TABLES, SOURCES = "{{ check totals }}", "{{ check tables }}", "{{ check sources }}"
ROUNDING = 1e-10  # of the value: a difference below it depends on the machine's arithmetic


def on_page_markdown(markdown, page, config, files):
    if TABLES not in markdown:
        return markdown
    import tests.reference.checks as checks  # only this page waits for the libraries it needs

    markdown = markdown.replace(TOTALS, totals(checks)).replace(TABLES, tables(checks))
    return markdown.replace(SOURCES, sources(checks))


def totals(checks):
    """How many checks of each kind a subject has; one line of all; a sentence before."""
    rows = [("Subject", "Checks that count", *(kind.capitalize() for kind in checks.KINDS))]
    whole = Counter()
    for subject in checks.SUBJECTS:
        kinds = Counter(one.kind for one in subject.CHECKS)
        whole += kinds
        rows.append((subject.SUBJECT, *_counts(kinds, checks)))
    rows.append(("**All**", *(f"**{one}**" for one in _counts(whole, checks))))
    apart = len(checks.CHECKS) - len(checks.counted())
    told = (
        f"**{len(checks.counted())} checks count, from {len(checks.sources())} sources.** "
        f"{apart} more are shown but not counted: recalled values and rules of the trade."
    )
    return f"{told}\n\n{_table(rows)}"


def _counts(kinds, checks):
    return (sum(kinds[one] for one in checks.COUNTS), *(kinds[one] for one in checks.KINDS))


def sources(checks):
    """Every source that counts, once, in a list."""
    return "\n".join(f"- {_cell(one)}" for one in checks.sources())


def tables(checks):
    """A heading for each subject, and its checks in a part that opens."""
    return "\n\n".join(_subject(one, checks.COUNTS) for one in checks.SUBJECTS)


def _subject(subject, counts):
    apart = [one for one in subject.CHECKS if one.kind not in counts]
    counted = [one for one in subject.CHECKS if one.kind in counts]
    parts = [
        f"### {subject.SUBJECT} {{ data-search-exclude }}",
        _part(f"{len(counted)} checks", counted),
    ]
    if apart:
        parts.append(_part(f"{len(apart)} more, not counted", apart))
    return "\n\n".join(parts)


def _part(summary, every):
    heads = ("What", "Source", "Here", "There", "Difference", "Allowed")
    rows = [heads, *(row(one) for one in every)]
    return f'<details markdown="1">\n<summary>{summary}</summary>\n\n{_table(rows)}\n\n</details>'


def row(check):
    """The cells of a check."""
    place = f", {check.place}" if check.place else ""
    kind = "" if check.kind.startswith("published") else f" ({check.kind})"
    why = f": {check.why}" if check.why else ""
    return (
        check.what,
        f"{check.source}{place}{kind}",
        _with_unit(_number(check.got), check.unit),
        _with_unit(_number(check.wanted), check.unit),
        difference(check),
        f"{_amount(check, check.near.size)}{why}",
    )


def difference(check):
    """How far the two are apart, as the tolerance is given."""
    whole = abs(check.wanted)
    if check.apart <= ROUNDING * whole:
        return "rounding"
    return _amount(check, check.apart / whole if check.near.relative else check.apart)


def _amount(check, size):
    if check.near.relative:
        return f"{_number(100 * size, 2)} %"
    return _with_unit(_number(size, 2), check.unit)


def _with_unit(number, unit):
    return f"{number} {unit}" if unit else number


def _number(value, digits=6):
    text = f"{value:.{digits}g}"
    if "e" not in text:
        return text.replace("-", "\N{MINUS SIGN}")
    digits_, _, power = text.partition("e")
    power = str(int(power)).replace("-", "\N{MINUS SIGN}")
    return f"{digits_.replace('-', chr(0x2212))} × 10<sup>{power}</sup>"


def _table(rows):
    lines = ["| " + " | ".join(_cell(str(cell)) for cell in one) + " |" for one in rows]
    rule = "| " + " | ".join("---" for _ in rows[0]) + " |"
    return "\n".join([lines[0], rule, *lines[1:]])


def _cell(text):
    return text.replace("|", "\\|")
