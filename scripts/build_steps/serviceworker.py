"""The service worker at the site's root: what it keeps, with the hash of each file.

It must be the last step, since it writes down what all files of the finished site hold.
"""

import base64
import hashlib
import json
import re

from scripts.build_steps.places import SCRIPTS

NAME = "sw.js"
SOURCE = SCRIPTS / "runtime" / "service_worker.js"
PACKED = re.compile(r"\.(?:br|gz)$")  # the same again, for hosts
# for developers, search engines, other languages or hosts: no page of ours asks for them; the
# zip holds the same again
LEFT_OUT = re.compile(
    r"\.map$|\.(?:br|gz)$|^sitemap\.xml|^assets/javascripts/lunr/|^content-security-policy\.txt$|^sw\.js$|^download/"
)


def listed(folder):
    """[address, "sha256-..."] of every file a reader may need, pages by their folder."""
    found = []
    for path in sorted(folder.rglob("*")):
        name = path.relative_to(folder).as_posix()
        if path.is_file() and not LEFT_OUT.search(name):
            found.append([re.sub(r"(^|/)index\.html$", r"\1", name), integrity(path.read_bytes())])
    return found


def integrity(content):
    return "sha256-" + base64.b64encode(hashlib.sha256(content).digest()).decode()


def release(files):
    """A name that changes with a byte of any file."""
    return hashlib.sha256(json.dumps(files).encode()).hexdigest()[:16]


def write(folder):
    """Write the worker; returns the name of the release."""
    files = listed(folder)
    name = release(files)
    lines = ",\n".join(f"  {json.dumps(file)}" for file in files)
    text = f'const RELEASE = "{name}";\nconst FILES = [\n{lines},\n];\n'
    (folder / NAME).write_text(text + SOURCE.read_text())
    return name
