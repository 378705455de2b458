"""``calc`` as a wheel: pure, without a network, the same bytes every time.

Written by hand in the format of PEP 427 with zipfile, so that the build needs no
isolated environment and no download; names are sorted and times fixed.
"""

import base64
import hashlib
import os
import time
import zipfile

import calc

OLDEST_ZIP_TIME = 315532800  # s since 1970; 1980-01-01, before which zip has no dates


def file_name():
    return f"calc-{calc.__version__}-py3-none-any.whl"


def sources(root):
    """(name in the wheel, bytes) of every module of ``calc``, sorted."""
    for path in sorted((root / "calc").rglob("*.py")):
        yield path.relative_to(root).as_posix(), path.read_bytes()


def metadata():
    """The four files of the wheel's .dist-info, RECORD left out."""
    yield (
        "METADATA",
        (
            f"Metadata-Version: 2.1\nName: calc\nVersion: {calc.__version__}\n"
            f"Summary: {calc.__doc__.strip().splitlines()[0]}\n"
            "License: MIT\nRequires-Python: >=3.11\n"
        ).encode(),
    )
    yield (
        "WHEEL",
        (b"Wheel-Version: 1.0\nGenerator: springline\nRoot-Is-Purelib: true\nTag: py3-none-any\n"),
    )
    yield "top_level.txt", b"calc\n"


def record_line(name, content):
    digest = base64.urlsafe_b64encode(hashlib.sha256(content).digest()).rstrip(b"=").decode()
    return f"{name},sha256={digest},{len(content)}\n"


def write(root, folder):
    """Write the wheel into ``folder``; returns its path."""
    info = f"calc-{calc.__version__}.dist-info"
    entries = [*sources(root), *((f"{info}/{name}", text) for name, text in metadata())]
    record = "".join(record_line(name, text) for name, text in entries)
    entries.append((f"{info}/RECORD", f"{record}{info}/RECORD,,\n".encode()))
    folder.mkdir(parents=True, exist_ok=True)
    path = folder / file_name()
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as archive:
        for name, content in entries:
            archive.writestr(_entry(name), content)
    return path


def _entry(name):
    seconds = max(int(os.environ.get("SOURCE_DATE_EPOCH", OLDEST_ZIP_TIME)), OLDEST_ZIP_TIME)
    entry = zipfile.ZipInfo(name, time.gmtime(seconds)[:6])
    entry.compress_type = zipfile.ZIP_DEFLATED
    entry.create_system = 3  # Unix, so that the bytes do not depend on the machine
    entry.external_attr = 0o644 << 16
    return entry
