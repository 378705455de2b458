"""Serve ``site/`` to this machine only, on a free port from 8000 up."""

import argparse
import functools
import http.server
from pathlib import Path

from scripts.build_steps.places import SITE, say

HOST = "127.0.0.1"
FIRST_PORT, LAST_PORT = 8000, 8099
CODINGS = {"br": "br", "gzip": "gz"}  # as browsers name them: how the packed file's name ends
HIGHEST_PORT = 65535  # a port is 16 bits: RFC 9293, section 3.1


class Handler(http.server.SimpleHTTPRequestHandler):
    """Right types for modules and WebAssembly; the site's own page for what is not there."""

    protocol_version = "HTTP/1.1"
    missing = False  # what is asked for: the next release may have it
    extensions_map = {
        **http.server.SimpleHTTPRequestHandler.extensions_map,
        ".html": "text/html; charset=utf-8",
        ".js": "text/javascript; charset=utf-8",
        ".mjs": "text/javascript; charset=utf-8",
        ".json": "application/json",
        ".svg": "image/svg+xml",
        ".wasm": "application/wasm",
        ".gz": "application/gzip",
        ".bin": "application/octet-stream",
    }

    def send_head(self):
        """A file packed beforehand where it lies there and the browser takes it."""
        path = Path(self.translate_path(self.path.split("?")[0]))
        if path.is_dir() and self.path.split("?")[0].endswith("/"):
            path /= "index.html"
        taken = self.headers.get("Accept-Encoding", "")
        for coding, end in CODINGS.items():
            packed = path.with_name(f"{path.name}.{end}")
            if coding in taken and packed.is_file() and path.is_file():
                return self._packed(packed, coding, self.guess_type(str(path)))
        return super().send_head()

    def _packed(self, path, coding, kind):
        file = path.open("rb")
        self.send_response(200)
        self.send_header("Content-Type", kind)
        self.send_header("Content-Encoding", coding)
        self.send_header("Vary", "Accept-Encoding")
        self.send_header("Content-Length", str(path.stat().st_size))
        self.end_headers()
        return file

    def end_headers(self):
        hashed = "/runtime/" in self.path and not self.path.endswith("manifest.js")
        hashed = hashed and not self.missing
        self.send_header("Cache-Control", "max-age=31536000, immutable" if hashed else "no-cache")
        super().end_headers()

    def send_error(self, code, message=None, explain=None):
        page = SITE / "404.html"
        if code != 404 or not page.exists():
            super().send_error(code, message, explain)
            return
        content, self.missing = page.read_bytes(), True
        self.send_response(404)
        self.send_header("Content-Type", self.extensions_map[".html"])
        self.send_header("Content-Length", str(len(content)))
        self.end_headers()
        if self.command != "HEAD":
            self.wfile.write(content)

    def log_message(self, *_args):
        """Quiet: the address is the only line that matters."""


class Server(http.server.ThreadingHTTPServer):
    allow_reuse_address = False  # or two servers would share a port on some systems


def open_server(first=FIRST_PORT, last=LAST_PORT):
    """A server on the first free port. Raises ``OSError`` if there is none."""
    handler = functools.partial(Handler, directory=str(SITE))
    for port in range(first, last + 1):
        try:
            return Server((HOST, port), handler)
        except OSError:
            continue
    raise OSError(f"no free port between {first} and {last}")


def port(text):
    """A port as typed; raises what ``argparse`` says in one line."""
    if text.isascii() and text.isdecimal() and 1 <= int(text) <= HIGHEST_PORT:
        return int(text)
    raise argparse.ArgumentTypeError(
        f"{text!r} is not a port: give a whole number from 1 to {HIGHEST_PORT}, or none"
    )


def read_arguments(words):
    parser = argparse.ArgumentParser(prog="scripts/serve", description=__doc__, allow_abbrev=False)
    parser.add_argument(
        "port", type=port, nargs="?", default=FIRST_PORT,
        help=f"the first port to try (default {FIRST_PORT})",
    )  # fmt: skip
    parser.add_argument("--check", action="store_true", help=argparse.SUPPRESS)
    return parser.parse_args(words)


def open_or_stop(first):
    try:
        return open_server(first, max(first, LAST_PORT))
    except OSError as error:
        raise SystemExit(f"springline: {error}. Name another: scripts/serve 9000") from error


def main(words=None):
    given = read_arguments(words)
    if given.check:
        return
    with open_or_stop(given.port) as server:
        say("serving the site; stop with Ctrl-C")
        print(f"http://{HOST}:{server.server_port}/", flush=True)
        try:
            server.serve_forever()
        except KeyboardInterrupt:
            say("stopped")


if __name__ == "__main__":
    main()
