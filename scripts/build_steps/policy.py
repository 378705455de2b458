"""The content-security policy: written into every page, and beside them for use as a header.

One policy serves all pages: the hashes of every inline script and style of the site, so that
whoever serves the site can send it as a header too. Nothing inline runs without its hash and
no style attribute is allowed: the theme and the charts set styles only through the DOM.
"""

import base64
import hashlib
import re

INLINE_SCRIPT = re.compile(
    r"<script\b(?![^>]*\bsrc=)([^>]*)>(.*?)</script>", re.DOTALL | re.IGNORECASE
)
INLINE_STYLE = re.compile(r"<style\b[^>]*>(.*?)</style>", re.DOTALL | re.IGNORECASE)
DATA_BLOCK = re.compile(r"""\btype=["']?application/(?:ld\+)?json""", re.IGNORECASE)
CHARSET = re.compile(r'<meta charset="utf-8">', re.IGNORECASE)
HEADER_FILE = "content-security-policy.txt"

SHIM = "vendor/iframe-worker.js"
FRAME = "vendor/search-frame.js"
WRITTEN = re.compile(
    r"<script>postMessage=\$\{(\w)\};importScripts=\$\{(\w)\};.*?<\\/script>", re.DOTALL
)


def digest(text):
    whole = hashlib.sha256(text.encode()).digest()
    return f"'sha256-{base64.b64encode(whole).decode()}'"


def inline(text):
    """(hashes of scripts, hashes of styles) that stand in a page; blocks of data do not run."""
    scripts = {
        digest(s) for about, s in INLINE_SCRIPT.findall(text) if not DATA_BLOCK.search(about)
    }
    return scripts, {digest(style) for style in INLINE_STYLE.findall(text)}


def served(scripts, styles):
    """For a site that is served: its own origin, hashed inline parts, and WebAssembly."""
    return {
        "default-src": ["'none'"],
        "script-src": ["'self'", "'wasm-unsafe-eval'", *sorted(scripts)],
        "worker-src": ["'self'"],
        "style-src": ["'self'", *sorted(styles)],
        "img-src": ["'self'", "data:"],
        "connect-src": ["'self'"],
        "form-action": ["'self'"],
        "base-uri": ["'none'"],
        "object-src": ["'none'"],
    }


def from_disk(scripts, styles):
    """For the copy opened from a disk, where browsers do not agree what 'self' means.

    Looser by: file: in place of 'self'; blob: because there a worker, and the modules in it,
    can only be made from text already loaded; frames, because the theme's search runs in one.
    """
    return {
        **served(scripts, styles),
        "script-src": ["'self'", "file:", "blob:", "'wasm-unsafe-eval'", *sorted(scripts)],
        "worker-src": ["blob:"],
        "style-src": ["'self'", "file:", *sorted(styles)],
        "img-src": ["'self'", "file:", "data:"],
        "connect-src": ["blob:", "data:"],
        "form-action": ["'none'"],
    }


def text_of(policy):
    return "; ".join(f"{name} {' '.join(values)}" for name, values in policy.items())


def write(folder, rule=served):
    """Put the policy ``rule`` makes into every page of ``folder``; returns its text.

    Raises ``ValueError`` where a page has no place for it.
    """
    pages = {path: path.read_text() for path in sorted(folder.rglob("*.html"))}
    found = [inline(text) for text in pages.values()]
    scripts, styles = (set().union(*kind) for kind in zip(*found, strict=True))
    policy = text_of(rule(scripts, styles))
    tag = f'<meta http-equiv="Content-Security-Policy" content="{policy}">'
    for path, text in pages.items():
        mended, count = CHARSET.subn(lambda found: f"{found[0]}\n{tag}", text, count=1)
        if count != 1:
            raise ValueError(f"{path.relative_to(folder)} has no <meta charset> to put it after")
        path.write_text(mended)
    if rule is served:
        header = f"Content-Security-Policy: {policy}; frame-ancestors 'none'\n"
        (folder / HEADER_FILE).write_text(header)
    return policy


def settle_search(folder):
    """In the copy for a disk: the search's frame loads its script instead of holding it.

    That script names the folder the copy lies in, so it has no hash that could be known here.
    """
    shim = folder / SHIM
    text = shim.read_text()
    post, load = WRITTEN.search(text).groups()
    functions = [re.search(rf"function {name}\(.*?\)\{{", text)[0] for name in (post, load)]
    bodies = [_function(text, start) for start in functions]
    address = f'new URL("{FRAME.rsplit("/", 1)[1]}",here)'
    text = WRITTEN.sub(
        lambda _: f"<script src=${{{address}}}><\\\\/script>".replace("\\\\", "\\"), text
    )
    shim.write_text(text.replace("(()=>{", "(()=>{const here=document.currentScript.src;", 1))
    (folder / FRAME).write_text(f"postMessage={bodies[0]};\nimportScripts={bodies[1]};\n")


def _function(text, start):
    """The source of the function that begins with ``start``: to its closing brace."""
    first = text.index(start)
    depth = 0
    for at in range(first + len(start) - 1, len(text)):
        depth += {"{": 1, "}": -1}.get(text[at], 0)
        if depth == 0:
            return text[first : at + 1]
    raise ValueError(f"{start} does not end")
