"""Pyodide made leaner: what is left out, what stays, and that a Pyodide written otherwise stops."""

import re

import pytest

from scripts.build_steps import lean, runtime

JAVASCRIPT = lean.RENAMED[lean.JAVASCRIPT]
TAKEN = re.compile(r'wasmExports\["(\w+)"\]', re.ASCII)
TINY = (
    "async function _createPyodideModule(settings){var io=new Int32Array(new WebAssembly.Memory("
    "{shared:!0,initial:1,maximum:1}).buffer);var _a,_b,_c;function assignWasmExports(wasmExports)"
    '{_a=Module["_a"]=wasmExports["a"];_b=Module["_b"]=wasmExports["b"];'
    '_c=Module["_c"]=wasmExports["c"].value>>>0}_a();}export default _createPyodideModule;'
)


@pytest.fixture(scope="module")
def published():
    return runtime.published()


@pytest.fixture(scope="module")
def made(published):
    return lean.lean(published)


def _sections(content):
    """[(kind, bytes)] of a WebAssembly module."""
    found, at = [], 8
    while at < len(content):
        length, start = lean.number(content, at + 1)
        found.append((content[at], content[start : start + length]))
        at = start + length
    return found


def _names(content):
    (section,) = [part for kind, part in _sections(content) if kind == lean.EXPORT_SECTION]
    count, at = lean.number(section, 0)
    names = []
    for _ in range(count):
        length, start = lean.number(section, at)
        names.append(section[start : start + length].decode())
        at = lean.number(section, start + length + 1)[1]
    assert at == len(section)
    return names


def test_the_webassembly_keeps_all_but_most_of_its_exports(published, made):
    before, after = (_sections(files[lean.WASM]) for files in (published, made))
    assert [kind for kind, _ in after] == [kind for kind, _ in before]
    differing = {
        kind for (kind, one), (_, other) in zip(before, after, strict=True) if one != other
    }
    assert differing == {lean.EXPORT_SECTION}
    names = _names(made[lean.WASM])
    assert 0 < len(names) < len(_names(published[lean.WASM])) / 10
    assert len(names) == len(set(names))


def test_what_the_script_takes_the_webassembly_still_gives(published, made):
    given = set(_names(published[lean.WASM]))
    taken = set(TAKEN.findall(made[JAVASCRIPT].decode())) & given
    assert taken  # else the pattern has gone stale
    assert taken <= set(_names(made[lean.WASM]))


def test_the_other_files_are_left_as_they_are_published(published, made):
    renamed = {lean.RENAMED.get(name, name): content for name, content in published.items()}
    assert made.keys() == renamed.keys()
    changed = {name for name in made if made[name] != renamed[name]}
    assert changed == {*lean.RENAMED.values(), lean.WASM}


def test_no_file_has_a_name_whose_type_hosts_may_not_know(made):
    assert {name.rsplit(".", 1)[1] for name in made} <= {"js", "wasm", "zip"}


def test_the_loader_fetches_nothing_that_a_start_needs_by_itself(made):
    text = made[lean.RENAMED[lean.LOADER]].decode()
    assert "pyodide.asm.wasm" not in text
    assert "instantiateStreaming" not in text


@pytest.mark.parametrize(("old", "_"), lean.GIVEN)
def test_a_loader_written_otherwise_stops_the_build(published, old, _):
    text = published[lean.LOADER].decode()
    assert old in text
    with pytest.raises(ValueError, match=lean.LOADER):
        lean.loader(text.replace(old, "written otherwise"))


def test_a_name_used_by_either_script_stays():
    text, names = lean.javascript(TINY, "settings._b")
    assert "var _a,_b;" in text
    assert TAKEN.findall(text) == ["a", "b"]
    assert {"a", "b"} <= names
    assert "c" not in names


def test_the_script_is_still_a_function_that_is_exported():
    text, _ = lean.javascript(TINY, "")
    assert text.startswith("const _createPyodideModule=(async function(settings){")
    assert text.endswith("});export default _createPyodideModule;")


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("async function", "function"),
        ("shared:!0", "shared:true"),
        ("assignWasmExports", "assignExports"),
        ('_b=Module["_b"]=wasmExports["b"]', "_b=other"),
        ("}export default", "} export default"),
    ],
)
def test_a_script_written_otherwise_stops_the_build(old, new):
    assert old in TINY
    with pytest.raises(ValueError, match=lean.JAVASCRIPT):
        lean.javascript(TINY.replace(old, new), "")


@pytest.mark.parametrize(
    ("value", "bytes_"),
    # the first three: WebAssembly Core Specification 2.0, section 5.2.2, and its note; 624485: the
    # worked example of DWARF 4, appendix C, from memory
    [(0, "00"), (3, "03"), (127, "7f"), (128, "8001"), (624485, "e58e26")],
)
def test_numbers_are_written_and_read_as_leb128(value, bytes_):
    assert lean.encoded(value) == bytes.fromhex(bytes_)
    assert lean.number(b"\xff" + bytes.fromhex(bytes_), 1) == (value, 1 + len(bytes_) // 2)
