"""The build: the same wheel every time, nothing from elsewhere, nothing unverified."""

import subprocess
import sys
import zipfile

import pytest

from scripts.build_steps import pages, parts, runtime, wheel
from scripts.build_steps.places import ROOT


def test_the_wheel_is_the_same_bytes_every_time(tmp_path):
    first = wheel.write(ROOT, tmp_path / "one").read_bytes()
    second = wheel.write(ROOT, tmp_path / "two").read_bytes()
    assert first == second


def test_the_wheel_installs_and_answers_where_nothing_else_is_installed(tmp_path):
    packed = wheel.write(ROOT, tmp_path)
    target = tmp_path / "installed"
    install = [sys.executable, "-m", "pip", "install", "-qq", "--no-index", "--no-deps"]
    subprocess.run([*install, "--target", target, packed], check=True)
    code = (
        "import sys; sys.path.insert(0, sys.argv[1]); import calc.bridge; print(calc.__file__);"
        'print(calc.bridge.handle(\'{"op": "work", "sheet": "pressure"}\')[:9])'
    )
    ran = subprocess.run(
        [sys.executable, "-I", "-S", "-c", code, str(target)], capture_output=True, text=True
    )
    wanted = [str(target / "calc" / "__init__.py"), '{"errors"']
    assert ran.stdout.splitlines() == wanted, ran.stderr


def test_the_wheel_holds_every_module_of_calc(tmp_path):
    names = set(zipfile.ZipFile(wheel.write(ROOT, tmp_path)).namelist())
    assert {p.relative_to(ROOT).as_posix() for p in (ROOT / "calc").rglob("*.py")} <= names


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


def test_the_runtime_name_changes_with_a_byte_of_content(tmp_path):
    one = tmp_path / "a"
    one.write_bytes(b"1")
    before = runtime.content_name([one])
    one.write_bytes(b"2")
    assert runtime.content_name([one]) != before


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


def test_no_lock_file_names_a_registry():
    for name in ("npm/package-lock.json", "requirements.txt"):
        text = (ROOT / "scripts" / name).read_text()
        assert '"resolved"' not in text
        assert "--index-url" not in text and "--find-links" not in text
