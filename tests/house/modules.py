"""The modules of calc as parsed source, for the tests of the house."""

import ast
from dataclasses import dataclass
from functools import cache
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
CALC = ROOT / "calc"


@dataclass(frozen=True)
class Module:
    """``name``: "calc.pipe.line"; ``path`` below the root."""

    name: str
    path: Path
    lines: tuple
    tree: ast.Module

    def functions(self):
        """(dotted name in the module, node) of every function and method."""
        yield from _functions(self.tree, "")


def _functions(node, inside):
    for child in ast.iter_child_nodes(node):
        if isinstance(child, ast.FunctionDef | ast.AsyncFunctionDef):
            yield f"{inside}{child.name}", child
            yield from _functions(child, f"{inside}{child.name}.")
        elif isinstance(child, ast.ClassDef):
            yield from _functions(child, f"{inside}{child.name}.")
        else:
            yield from _functions(child, inside)


@cache
def modules(folder="calc"):
    """Every ``Module`` below a folder of the repository, by path."""
    found = []
    for path in sorted((ROOT / folder).rglob("*.py")):
        parts = path.relative_to(ROOT).with_suffix("").parts
        name = ".".join(parts[:-1] if parts[-1] == "__init__" else parts)
        text = path.read_text(encoding="utf-8")
        found.append(
            Module(name, path.relative_to(ROOT), tuple(text.splitlines()), ast.parse(text))
        )
    return tuple(found)


def imported(module):
    """Dotted names a module imports, wherever in it: "a.b", and "a.b.c" where it takes c of it."""
    for node in ast.walk(module.tree):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            yield node.module
            yield from (f"{node.module}.{alias.name}" for alias in node.names)
