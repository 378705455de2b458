"""Build the site into ``site/``: made beside it, then put in its place in one go."""

import shutil
import time

from scripts.build_steps import bundle, offline, pages, parts, policy, runtime, serviceworker
from scripts.build_steps.places import ROOT, SITE, WORKSHOP, locked, say


def build(folder):
    pages.make(ROOT / "mkdocs.yml", folder)
    parts.write_vendor(folder / "vendor")
    manifest = runtime.write(folder / "runtime")
    bundle.write(folder)
    pages.mend(folder)
    policy.write(folder)
    pages.check(folder)
    offer_copy(folder / "download")
    serviceworker.write(folder)
    return manifest


def offer_copy(folder):
    """The site as one zip for use without a network, to be downloaded from the site itself."""
    folder.mkdir()
    shutil.copyfile(offline.make(), folder / "springline.zip")


def swap(folder):
    """Put the new site where the old one was; a failed build leaves the old one."""
    old = WORKSHOP / "site.old"
    shutil.rmtree(old, ignore_errors=True)
    if SITE.exists():
        SITE.rename(old)
    folder.rename(SITE)
    shutil.rmtree(old, ignore_errors=True)


def main():
    started = time.monotonic()
    with locked():
        say("building the site")
        folder = WORKSHOP / "site"
        shutil.rmtree(folder, ignore_errors=True)
        manifest = build(folder)
        swap(folder)
    seconds = time.monotonic() - started
    say(f"built site/ in {seconds:.1f} s, runtime {manifest['folder']}")


if __name__ == "__main__":
    main()
