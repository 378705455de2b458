"""The defaults that links of each version leave out: never changed once a release is out."""

from importlib import import_module

NEWEST = 1


def table(version: int, sheet: str, system: str) -> dict[str, str]:
    """{field's key: text} that a link of ``version`` leaves out; "runs.long" is a column's.

    A sheet that is newer than the version has none.
    """
    fields = import_module(f"calc.site.frozen.v{version}").TABLES.get(sheet, {})
    at = 1 if system == "us" else 0
    return {key: texts if isinstance(texts, str) else texts[at] for key, texts in fields.items()}
