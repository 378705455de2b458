"""The Python that a start needs, as one zip. Run by Pyodide at build: it must parse its own Python.

Of the standard library only what is imported goes in. Comments and docstrings stay out: nobody
reads them in a browser, and they are half of what would be sent.
"""

import ast
import hashlib
import importlib
import io
import json
import os
import zipfile
import zipimport

DAY = (1980, 1, 1, 0, 0, 0)  # the oldest that zip can say: the same bytes every time
# what only a fault, another device or another locale would import
ALSO = ("_strptime", "encodings.ascii", "encodings.latin_1", "encodings.utf_8_sig")


class _Bare(ast.NodeTransformer):
    """Takes docstrings away. A class with a decorator gets a mark in its place: without one
    ``dataclass`` would write a signature there, which takes time."""

    def _body(self, node):
        self.generic_visit(node)
        first = node.body[0] if node.body else None
        if isinstance(first, ast.Expr) and isinstance(getattr(first.value, "value", None), str):
            del node.body[0]
        if isinstance(node, ast.ClassDef) and node.decorator_list:
            node.body.insert(0, ast.Expr(ast.Constant(".")))
        if not node.body and not isinstance(node, ast.Module):
            node.body.append(ast.Pass())
        return node

    visit_Module = visit_ClassDef = visit_FunctionDef = visit_AsyncFunctionDef = _body


def bare(source):
    return ast.unparse(ast.fix_missing_locations(_Bare().visit(ast.parse(source)))) + "\n"


def sources(wheel, names):
    """{name in the zip: source} of the ``wheel`` and of those of ``names`` that are in a zip."""
    found = {}
    for name in (*names, *ALSO):
        module = importlib.import_module(name)
        loader = getattr(module.__spec__, "loader", None)
        if isinstance(loader, zipimport.zipimporter):
            path = module.__file__.removeprefix(loader.archive + "/")
            found[path] = loader.get_source(name)
    with zipfile.ZipFile(wheel) as archive:
        for name in archive.namelist():
            if name.endswith(".py"):
                found[name] = archive.read(name).decode()
    return found


def packed(found, known):
    """The zip. ``known``: {digest: bare source} of modules made bare before; it is added to."""
    whole = io.BytesIO()
    with zipfile.ZipFile(whole, "w") as archive:
        for name, source in sorted(found.items()):
            key = hashlib.sha256(source.encode()).hexdigest()
            if key not in known:
                known[key] = bare(source)
            entry = zipfile.ZipInfo(name, DAY)  # stored: compressed as one, it is a fifth smaller
            entry.external_attr = 0o644 << 16
            archive.writestr(entry, known[key])
    return whole.getvalue()


def run(wheel, names, kept):
    """The zip; ``kept`` is a file of what is known, which need not be there."""
    known = {}
    if os.path.exists(kept):
        with open(kept) as file:
            known = json.load(file)
    made = packed(sources(wheel, names), known)
    with open(kept, "w") as file:
        json.dump(known, file)
    return made
