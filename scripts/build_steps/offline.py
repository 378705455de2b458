"""The site as one folder that opens by double click: ``dist/springline-<version>.zip``.

A page from a disk may not fetch, so the runtime's files become base64 in classic scripts,
and pages have names of their own instead of folders.
"""

import base64
import functools
import gzip
import json
import os
import re
import shutil
import zipfile

from mkdocs.utils.yaml import yaml_load

import calc
from scripts.build_steps import bundle, pages, parts, policy, runtime
from scripts.build_steps.places import CACHE, DIST, ROOT, SCRIPTS, WORKSHOP, locked, say

LIMIT = 15_000_000  # bytes of the zip: small enough for most mail boxes and poor lines
HREF = re.compile(r'(<a\b[^>]*?\bhref=")([^":?#]*/)((?:#[^"]*)?")')


def name():
    return f"springline-{calc.__version__}"


def hooks():
    """The scripts that mkdocs.yml names, in its order.

    Settings that inherit replace a list as a whole, and relative names would be looked for beside
    them: so each is named again. MkDocs' own reader knows the tags of the theme.
    """
    with (ROOT / "mkdocs.yml").open(encoding="utf-8") as file:
        return yaml_load(file)["hooks"]


def config_file():
    """Settings for mkdocs beside its own: as JSON, which YAML holds, since in plain YAML a folder
    called "a #b" would end at its space."""
    settings = {
        "INHERIT": str(ROOT / "mkdocs.yml"),
        "docs_dir": str(ROOT / "docs"),
        "use_directory_urls": False,
        "theme": {"custom_dir": str(SCRIPTS / "theme")},
        "hooks": [str(ROOT / name) for name in hooks()],
        "plugins": ["search", "offline"],
    }
    path = CACHE / "mkdocs-offline.yml"
    path.write_text(json.dumps(settings, ensure_ascii=False, indent=1))
    return path


def embed(folder, manifest):
    """Replace the runtime's files by scripts that hold them; returns nothing."""
    where = folder / manifest["folder"]
    names = sorted(path.name for path in where.iterdir() if path.name != runtime.WORKER)
    for one in names:
        path = where / one
        write_script(where, one, path.read_bytes())
        path.unlink()
    folder_worker = runtime.RUNTIME / "folder_worker.js"
    worker = folder_worker.read_text() + (where / runtime.WORKER).read_text()
    write_script(where, runtime.WORKER, worker.encode())
    (where / runtime.WORKER).write_text(worker)
    runtime.tell(folder, {**manifest, "embedded": [*names, runtime.WORKER]})


def write_script(folder, called, content):
    """``called``.js, a classic script that holds the content, gzipped, as base64."""
    packed = gzip.compress(content, 9, mtime=0)
    text = base64.b64encode(packed).decode()
    script = f'(window.SPRINGLINE_FILES ||= {{}})["{called}"] =\n"{text}";\n'
    (folder / f"{called}.js").write_text(script)


def flatten_links(folder):
    """Links written for folders ("head/") go to pages ("head.html")."""
    for path in sorted(folder.rglob("*.html")):
        text = path.read_text()
        flat = HREF.sub(functools.partial(_flattened, path.parent), text)
        if flat != text:
            path.write_text(flat)


def _flattened(start, found):
    return found[1] + _flat(start, found[2]) + found[3]


def _flat(start, link):
    page = link.rstrip("/") + ".html"
    if (start / page).exists():
        return page
    if (start / link / "index.html").exists():
        return link + "index.html"
    raise ValueError(f"{link} leads to no page of the folder")


def write_zip(folder, target):
    """Sorted and with one fixed time, so that the same folder gives the same zip."""
    with zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as archive:
        for path in sorted(p for p in folder.rglob("*") if p.is_file()):
            entry = zipfile.ZipInfo(f"{folder.name}/{path.relative_to(folder).as_posix()}")
            entry.compress_type = zipfile.ZIP_DEFLATED
            entry.external_attr = 0o644 << 16
            archive.writestr(entry, path.read_bytes())


def make():
    folder = WORKSHOP / name()
    shutil.rmtree(folder, ignore_errors=True)
    pages.make(config_file(), folder)
    parts.write_vendor(folder / "vendor")
    embed(folder / "runtime", runtime.write(folder / "runtime"))
    for left in ("sitemap.xml", "sitemap.xml.gz", "404.html"):
        (folder / left).unlink(missing_ok=True)
    bundle.write(folder)
    pages.mend(folder)
    flatten_links(folder)
    policy.settle_search(folder)
    policy.write(folder, policy.from_disk)
    pages.check(folder)
    DIST.mkdir(exist_ok=True)
    target = DIST / f"{name()}.zip"
    write_zip(folder, target)
    return target


def main():
    with locked():
        say("making the folder that opens without a server")
        target = make()
    size = os.path.getsize(target)
    if size > LIMIT:
        raise SystemExit(f"springline: {target.name} has {size} bytes, more than {LIMIT}")
    say(f"made {target.relative_to(ROOT)}, {size / 1e6:.1f} MB: unpack it and open index.html")


if __name__ == "__main__":
    main()
