"""Plain hosts of static files, as different as those a site may meet: below a sub-path, with
compression, with headers, with files swapped or missing, or cut off."""

import gzip
import http.server
import mimetypes
import threading
import urllib.parse

from scripts.weak_line import Slowly

TYPES = {".mjs": "text/javascript", ".js": "text/javascript", ".wasm": "application/wasm"}


class Host:
    """Serves ``folder`` below ``under``; what it does may be changed while it runs.

    ``types``: {end of a name: type}; ``line``: what all replies go through, slowly.
    """

    def __init__(
        self,
        folder,
        under="/",
        headers=None,
        packed=False,
        missing_page=True,
        types=None,
        line=None,
    ):
        self.folder, self.under = folder, under
        self.types, self.line = {**TYPES, **(types or {})}, line
        self.headers, self.packed, self.missing_page = headers or {}, packed, missing_page
        self.overrides = {}  # {name: bytes, or None for "not found"}
        self.asked = []  # names in the order they were asked for
        self.broken = {}  # {name: how many times its reply breaks off in the middle}
        self.server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), self._handler())
        self.port = self.server.server_port
        threading.Thread(target=self.server.serve_forever, daemon=True).start()

    @property
    def address(self):
        return f"http://127.0.0.1:{self.port}{self.under}"

    def cut(self):
        """From now on nobody answers at this address."""
        self.server.shutdown()
        self.server.server_close()

    def content(self, name):
        """Bytes of a file of the site; None where there is none."""
        if name in self.overrides:
            return self.overrides[name]
        path = self.folder / name
        return path.read_bytes() if path.is_file() else None

    def _handler(host):
        class Handler(http.server.BaseHTTPRequestHandler):
            def do_GET(self):
                asked = urllib.parse.unquote(self.path.split("?")[0])
                if not asked.startswith(host.under):
                    self.reply(404, "text/plain", b"not of this site")
                    return
                name = asked[len(host.under) :]
                host.asked.append(name)
                if (host.folder / name).is_dir() and name and not name.endswith("/"):
                    self.send_response(301)
                    self.send_header("Location", self.path.split("?")[0] + "/")
                    self.send_header("Content-Length", "0")
                    self.end_headers()
                    return
                if name == "" or name.endswith("/"):
                    name += "index.html"
                content = host.content(name)
                if content is None:
                    page = host.content("404.html") if host.missing_page else b"not here"
                    self.reply(404, "text/html", page)
                    return
                self.reply(200, self.type_of(name), content, name)

            def type_of(self, name):
                suffix = "." + name.rsplit(".", 1)[-1]
                return (
                    host.types.get(suffix)
                    or mimetypes.guess_type(name)[0]
                    or "application/octet-stream"
                )

            def reply(self, status, kind, content, name=""):
                self.send_response(status)
                self.send_header("Content-Type", kind)
                if host.packed and "gzip" in self.headers.get("Accept-Encoding", ""):
                    content = gzip.compress(content, 1)
                    self.send_header("Content-Encoding", "gzip")
                    self.send_header("Vary", "Accept-Encoding")
                for key, value in host.headers.items():
                    self.send_header(key, value)
                self.send_header("Content-Length", str(len(content)))
                self.end_headers()
                if host.broken.get(name):
                    host.broken[name] -= 1
                    self.close_connection = True
                    content = content[: len(content) // 2]
                out = Slowly(self.wfile, host.line) if host.line else self.wfile
                out.write(content)

            def log_message(self, *_args):
                pass

        return Handler
