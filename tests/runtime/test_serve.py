"""The server of scripts/serve: this machine only, right types, the site's own 404 page."""

import contextlib
import subprocess
import sys
import threading
import urllib.error
import urllib.request

import pytest

from scripts.build_steps.places import ROOT
from scripts.serve_site import HOST, main, open_server, read_arguments


@contextlib.contextmanager
def _running(server):
    threading.Thread(target=server.serve_forever, daemon=True).start()
    yield server
    server.shutdown()
    server.server_close()


@pytest.fixture
def served(site_folder):
    with _running(open_server(8300, 8399)) as server:
        yield f"http://{HOST}:{server.server_port}/"


@pytest.mark.parametrize(
    ("pattern", "kind"),
    [
        ("runtime/*/first.0.wasm", "application/wasm"),
        ("runtime/*/pyodide.js", "text/javascript; charset=utf-8"),
        ("runtime/manifest.js", "text/javascript; charset=utf-8"),
        ("index.html", "text/html; charset=utf-8"),
    ],
)
def test_files_are_sent_with_the_type_browsers_insist_on(served, site_folder, pattern, kind):
    path = next(site_folder.glob(pattern)).relative_to(site_folder)
    with urllib.request.urlopen(served + path.as_posix()) as reply:
        assert reply.headers["Content-Type"] == kind


def test_what_is_not_there_gets_the_sites_own_page_and_status_404(served, site_folder):
    with pytest.raises(urllib.error.HTTPError) as raised:
        urllib.request.urlopen(served + "no-such-page/")
    assert raised.value.code == 404
    assert raised.value.read() == (site_folder / "404.html").read_bytes()


def test_a_taken_port_is_passed_over(site_folder):
    with _running(open_server(8400, 8499)) as first, _running(open_server(8400, 8499)) as second:
        assert second.server_port > first.server_port


def test_only_this_machine_is_listened_to(site_folder):
    with _running(open_server(8500, 8599)) as server:
        assert server.server_address[0] == "127.0.0.1"


def test_only_hashed_files_may_be_kept_for_ever(served, site_folder):
    def cached(path):
        with urllib.request.urlopen(served + path) as reply:
            return reply.headers["Cache-Control"]

    hashed = next(site_folder.glob("runtime/*/pyodide.js")).relative_to(site_folder)
    assert "immutable" in cached(hashed.as_posix())
    assert cached("runtime/manifest.js") == cached("index.html") == "no-cache"


@pytest.mark.parametrize("word", ["abc", "99999", "-1", "0", "80.5", "8\u00b3", ""])
def test_what_is_no_port_is_said_in_one_sentence_with_exit_code_2(word, capsys):
    with pytest.raises(SystemExit) as raised:
        main([word])
    assert raised.value.code == 2
    said = capsys.readouterr().err.splitlines()
    assert f"{word!r} is not a port: give a whole number from 1 to 65535" in said[-1]


def test_a_wrong_port_leaves_no_traceback():
    command = [sys.executable, "-m", "scripts.serve_site", "99999"]
    ran = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, timeout=60)
    assert ran.returncode == 2
    assert "Traceback" not in ran.stderr


@pytest.mark.parametrize(("words", "port"), [([], 8000), (["1"], 1), (["65535"], 65535)])
def test_a_port_may_be_named_or_left_out(words, port):
    assert read_arguments(words).port == port


def test_ports_that_are_all_taken_are_said_without_a_traceback(site_folder):
    with _running(open_server(65535, 65535)), pytest.raises(SystemExit) as raised:
        main(["65535"])
    assert "no free port between 65535 and 65535" in str(raised.value)
