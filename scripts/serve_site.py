"""Serve ``site/`` to this machine only, on a free port from 8000 up."""

import functools
import http.server
import sys

from scripts.build_steps.places import SITE, say

HOST = "127.0.0.1"
FIRST_PORT, LAST_PORT = 8000, 8099


class Handler(http.server.SimpleHTTPRequestHandler):
    """Right types for modules and WebAssembly; the site's own page for what is not there."""

    protocol_version = "HTTP/1.1"
    extensions_map = {
        **http.server.SimpleHTTPRequestHandler.extensions_map,
        ".html": "text/html; charset=utf-8",
        ".js": "text/javascript; charset=utf-8",
        ".mjs": "text/javascript; charset=utf-8",
        ".json": "application/json",
        ".svg": "image/svg+xml",
        ".wasm": "application/wasm",
        ".gz": "application/gzip",
    }

    def end_headers(self):
        hashed = "/runtime/" in self.path and not self.path.endswith("manifest.js")
        self.send_header("Cache-Control", "max-age=31536000, immutable" if hashed else "no-cache")
        super().end_headers()

    def send_error(self, code, message=None, explain=None):
        page = SITE / "404.html"
        if code != 404 or not page.exists():
            return super().send_error(code, message, explain)
        content = page.read_bytes()
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


def main():
    first = int(sys.argv[1]) if len(sys.argv) > 1 else FIRST_PORT
    with open_server(first, max(first, LAST_PORT)) as server:
        say("serving the site; stop with Ctrl-C")
        print(f"http://{HOST}:{server.server_port}/", flush=True)
        try:
            server.serve_forever()
        except KeyboardInterrupt:
            say("stopped")


if __name__ == "__main__":
    main()
