"""A server behind a weak line: one token bucket for all connections, and a wait for each request.

The browser's own throttle does not reach a page's workers, so the line is slow here.
"""

import gzip
import threading
import time
from pathlib import Path

from scripts.serve_site import Handler

PACKET = 1460  # bytes; of Ethernet's 1500 what IPv4 and TCP leave: RFC 879, section 3
TEXTS = {".html", ".js", ".mjs", ".css", ".json", ".svg", ".wasm", ".txt", ".xml"}  # as hosts do


class Line:
    """``rate`` bytes in a second for all together, ``delay`` seconds before each reply."""

    def __init__(self, rate, delay):
        self.rate, self.delay = rate, delay
        self.free = 0.0  # s; when all that was taken has gone
        self.lock = threading.Lock()
        self.sent = 0  # bytes, with headers

    def take(self, count):
        """Wait until ``count`` bytes may go; connections take turns packet by packet."""
        with self.lock:
            now = time.monotonic()
            self.free = max(self.free, now) + count / self.rate
            wait = self.free - now
            self.sent += count
        time.sleep(wait)


class Slowly:
    """A file to write to that goes through the line."""

    def __init__(self, file, line):
        self.file, self.line = file, line

    def write(self, content):
        for start in range(0, len(content), PACKET):
            packet = content[start : start + PACKET]
            self.line.take(len(packet))
            self.file.write(packet)
        return len(content)

    def __getattr__(self, name):
        return getattr(self.file, name)


class Weak(Handler):
    """Serves a folder over ``server.line``, gzipped, and keeps what was asked for."""

    packed = {}  # path -> what is sent for it, which takes a while to make

    def setup(self):
        super().setup()
        self.wfile = Slowly(self.wfile, self.server.line)

    def do_GET(self):
        self.server.asked.append(self.path)
        time.sleep(self.server.line.delay)
        path = Path(self.translate_path(self.path.split("?")[0]))
        if path.is_dir():
            path /= "index.html"
        if not path.is_file():
            self.send_error(404)
            return
        if path not in self.packed:
            content = path.read_bytes()
            texts = path.suffix in TEXTS
            self.packed[path] = gzip.compress(content, 9) if texts else content
        content = self.packed[path]
        self.send_response(200)
        self.send_header("Content-Type", self.guess_type(path))
        if path.suffix in TEXTS:
            self.send_header("Content-Encoding", "gzip")
        self.send_header("Content-Length", str(len(content)))
        self.end_headers()
        self.wfile.write(content)
