"""The build: a runtime named after its content, nothing from elsewhere, nothing unverified."""

import base64
import gzip
import hashlib
import re
import tempfile
from pathlib import Path

import pytest

from scripts.build_steps import bundle, pages, parts, runtime
from scripts.site_hook import calculator, on_post_page


def test_a_changed_part_from_npm_stops_the_build(tmp_path, monkeypatch):
    name = "iframe-worker/shim/index.js"
    changed = tmp_path / name
    changed.parent.mkdir(parents=True)
    changed.write_bytes((parts.PARTS / name).read_bytes() + b"\n")
    monkeypatch.setattr(parts, "PARTS", tmp_path)
    with pytest.raises(ValueError, match="iframe-worker"):
        parts.read(name)


def test_a_part_without_a_known_hash_stops_the_build():
    with pytest.raises(ValueError, match="package.json"):
        parts.read("vega/package.json")


def _names_and_hashes(folder):
    """The name that a folder of the runtime must have, worked out apart from the build."""
    lines = "".join(
        f"{path.name} {hashlib.sha256(path.read_bytes()).hexdigest()}\n"
        for path in sorted(folder.iterdir())
    )
    return hashlib.sha256(lines.encode()).hexdigest()[:16]


def test_the_runtime_folder_is_named_after_all_that_is_in_it(site_folder):
    (folder,) = (path for path in (site_folder / "runtime").iterdir() if path.is_dir())
    assert runtime.piece_name(runtime.SNAPSHOT, 0) in {path.name for path in folder.iterdir()}
    assert folder.name == _names_and_hashes(folder)


@pytest.fixture
def snapshots(tmp_path, monkeypatch):
    """``make(snapshot, node)`` gives the runtime's manifest, as node of that version made it."""

    def make(snapshot, node):
        def prepare(folder, _packed):
            for name in (runtime.FIRST, runtime.REST, runtime.LIBRARY):
                (folder / name).write_bytes(b"of Pyodide")

        def take(folder):
            (folder / runtime.SNAPSHOT).write_bytes(snapshot)
            (folder / runtime.MEMORY).write_text("{}")

        monkeypatch.setattr(runtime, "prepare", prepare)
        monkeypatch.setattr(runtime, "take_snapshot", take)
        monkeypatch.setattr(runtime, "node_version", lambda: node)
        return runtime.write(Path(tempfile.mkdtemp(dir=tmp_path)))

    monkeypatch.setattr(runtime, "CACHE", tmp_path / "cache")
    empty = dict.fromkeys(runtime.lean.RENAMED.values(), b"")
    monkeypatch.setattr(runtime.lean, "lean", lambda _: empty)  # its seconds are not needed
    return make


def test_another_snapshot_of_the_same_python_gets_another_name(snapshots):
    one, two = snapshots(b"one", "v20.0.0"), snapshots(b"two", "v24.0.0")
    assert one["files"][runtime.FIRST] == two["files"][runtime.FIRST]
    assert one["folder"] != two["folder"]
    assert snapshots(b"one", "v22.0.0")["folder"] == one["folder"]


def test_a_snapshot_is_taken_once_for_each_node(snapshots):
    first = snapshots(b"one", "v20.0.0")
    assert snapshots(b"not taken", "v20.0.0") == first
    assert snapshots(b"taken", "v24.0.0") != first


def test_a_file_in_pieces_is_whole_again_and_each_piece_fits_what_is_told_of_it(monkeypatch):
    monkeypatch.setattr(runtime, "PIECE", 10)
    content, shipped = bytes(range(25)), {}
    told = runtime.pieces("a.b.wasm", content, shipped)
    assert list(shipped) == ["a.b.0.wasm", "a.b.1.wasm", "a.b.2.wasm"]
    assert b"".join(shipped.values()) == content
    for (length, _, sha256), piece in zip(told, shipped.values(), strict=True):
        assert length == len(piece)
        assert base64.b64decode(sha256) == hashlib.sha256(piece).digest()


def test_what_a_start_needs_is_less_than_half_of_pyodide(site_folder):
    """The bytes decide how long a reader on a weak line waits: our choice of a limit."""

    def sent(content):
        return min(len(content), len(gzip.compress(content, 9)))

    (folder,) = (path for path in (site_folder / "runtime").iterdir() if path.is_dir())
    needed = [path for path in folder.iterdir() if not path.name.startswith(("rest.", "snapshot."))]
    ours = sum(sent(path.read_bytes()) for path in needed)
    assert ours < sum(sent(content) for content in runtime.published().values()) / 2


FOREIGN = [
    '<script src="https://example.org/a.js"></script>',
    '<script src="//example.org/a.js"></script>',
    '<link rel="stylesheet" href="http://example.org/a.css">',
    '<link rel="preconnect" href="https://example.org">',
    '<img src="https://example.org/a.png">',
    '<img src="a.png" srcset="a.png 1x, https://example.org/b.png 2x">',
    '<p style="background: url(https://example.org/a.png)">',
    "<style>@import 'https://example.org/a.css';</style>",
    '<iframe src="https://example.org/"></iframe>',
]


@pytest.mark.parametrize("text", FOREIGN)
def test_a_page_that_loads_from_another_origin_is_found(text):
    assert len(pages.foreign_loads(text)) == 1


OWN = [
    '<script src="assets/a.js"></script>',
    '<a href="https://example.org/">a source</a>',
    '<link rel="canonical" href="https://example.org/">',
    '<img src="data:image/png;base64,AAAA">',
]


@pytest.mark.parametrize("text", OWN)
def test_own_files_and_links_to_read_are_left_alone(text):
    assert pages.foreign_loads(text) == []


def test_the_built_pages_load_nothing_from_another_origin(site_folder):
    pages.check(site_folder)


def test_the_search_shim_becomes_our_own_copy(tmp_path):
    page = tmp_path / "deep" / "page.html"
    page.parent.mkdir()
    page.write_text(f'<script src="{pages.SHIM}"></script>')
    pages.mend(tmp_path)
    assert page.read_text() == '<script src="../vendor/iframe-worker.js"></script>'


def _page(*scripts):
    return "".join(f'<script src="{name}"{late}></script>\n' for name, late in scripts)


@pytest.fixture
def bundled(tmp_path, monkeypatch):
    """``write(pages)`` gives the folder of those pages ({name: text}) with their scripts in two."""
    monkeypatch.setattr(bundle, "OURS", ["link", "engine", "calculator"])

    def write(pages_):
        for name in ("runtime/manifest", "assets/link", "assets/engine", "assets/calculator"):
            path = tmp_path / f"{name}.js"
            path.parent.mkdir(exist_ok=True)
            path.write_text(f"{name};")
        for name, text in pages_.items():
            path = tmp_path / name
            path.parent.mkdir(exist_ok=True)
            path.write_text(text)
        bundle.write(tmp_path)
        return tmp_path

    return write


HEAD = (("assets/link.js", ""), ("runtime/manifest.js", ""), ("assets/engine.js", ""))
DEEP = tuple((f"../{name}", late) for name, late in HEAD)


def test_the_scripts_of_a_page_become_two_in_their_order(bundled):
    theirs = '<script src="assets/javascripts/bundle.js"></script>'
    late, deep = ("assets/calculator.js", " defer"), ("../assets/calculator.js", " defer")
    folder = bundled(
        {"index.html": _page(*HEAD, late) + theirs, "head/index.html": _page(*DEEP, deep)}
    )
    assert (folder / "assets/head.js").read_text() == "assets/link;runtime/manifest;assets/engine;"
    assert (folder / "assets/page.js").read_text() == "assets/calculator;"
    two = (("assets/head.js", ""), ("assets/page.js", " defer"))
    assert (folder / "index.html").read_text() == _page(*two) + theirs
    up = tuple((f"../{name}", late) for name, late in two)
    assert (folder / "head/index.html").read_text() == _page(*up)


def test_a_script_of_few_pages_stays_a_file_that_only_those_name(bundled):
    late, few = ("assets/calculator.js", " defer"), '<script src="assets/places.js" defer></script>'
    folder = bundled({"power.html": _page(*HEAD, late) + few, "index.html": _page(*HEAD, late)})
    assert few in (folder / "power.html").read_text()
    assert "places" not in bundle.OURS and "places" in bundle.APART


def test_pages_that_name_different_scripts_stop_the_build(bundled):
    with pytest.raises(ValueError, match="different scripts"):
        bundled({"index.html": _page(*HEAD), "head/index.html": _page(*DEEP[:2])})


def test_no_built_page_has_a_browser_fetch_the_next_one_ahead(site_folder):
    """Firefox does so for rel="next", and logs that the policy forbids it."""
    ahead = [
        page for page in site_folder.rglob("*.html") if b'<link rel="next"' in page.read_bytes()
    ]
    assert ahead == []


def test_who_uses_the_tab_key_can_skip_to_the_numbers_and_to_the_answer():
    page = f'<div data-md-component="skip"></div>{calculator("reach", "", flat=False)}'
    made = on_post_page(page, None, None)
    skips = re.findall(r'<a href="#([^"]+)" class="md-skip">([^<]+)</a>', made)
    assert [words for _, words in skips] == ["Skip to the numbers", "Skip to the answer"]
    assert all(made.count(f' id="{place}"') == 1 for place, _ in skips)
    assert "md-skip" not in on_post_page('<div data-md-component="skip"></div>', None, None)
