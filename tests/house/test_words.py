"""What must not stand in a text: a solver's own words for readers, our machines for anybody."""

import ast
import re
import subprocess

import pytest

from tests.house.modules import ROOT, modules

# words of those who write solvers, and units of the inside, as a reader could meet them
INSIDE = re.compile(
    r"\(SI[,)]|\bm3\b|\bm3/s\b|Brent|bisect|bracket|\bpivot|singular|residual|converg|iteration"
    r"|crossing|Traceback|InputError|RangeError|\bNaN\b"
)
UNITS_TYPED = (
    "calc.units",
    "calc.quantities",
    "calc.site.enquiry",
    "calc.site.enquiry_numbers",
    "calc.site.enquiry_units",
    "calc.site.enquiry_spelling",
)  # "m3/s" is what readers type
# numbers and words for whoever mends the code: in the traceback, never in the message
DETAIL = {"UnsolvedError", "add_note", "ValueError", "KeyError", "AttributeError"}

HOSTS = tuple("".join(parts) for parts in (
    ("registry.", "npmjs"), ("registry.", "yarnpkg"), ("files.", "pythonhosted"), ("/opt/", "pypi"),
    ("/pypi", "-more"), ("localhost:", "4873"), ("--index", "-url "), ("/work", "/main"),
    ("/work", "/wt"), ("/work", "/shared"), ("/root", "/"),
))  # fmt: skip
HOMES = re.compile(r"/home/(?!pyodide\b)[a-z]\w+|/Users/[A-Za-z]\w+|[A-Z]:\\Users\\")


def sentences(tree):
    """Every text of a module that is no docstring and no detail, with its line."""
    silent = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            silent.add(node.value)
        if isinstance(node, ast.Call):
            called = getattr(node.func, "id", getattr(node.func, "attr", ""))
            if called in DETAIL:
                silent |= {one for one in ast.walk(node) if isinstance(one, ast.Constant)}
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and node not in silent:
            yield node.lineno, node.value


@pytest.mark.parametrize(
    "module",
    [pytest.param(one, id=one.name) for one in modules() if one.name not in UNITS_TYPED],
)
def test_no_word_of_the_inside_reaches_a_reader(module):
    found = [(line, text) for line, text in sentences(module.tree) if INSIDE.search(text)]
    assert not found


def committed():
    """(name, text) of every text file that git keeps or would keep."""
    names = subprocess.run(
        ["git", "ls-files", "--cached", "--others", "--exclude-standard", "-z"],
        cwd=ROOT, capture_output=True, text=True, check=True,
    ).stdout.split("\0")  # fmt: skip
    for name in filter(None, names):
        try:
            yield name, (ROOT / name).read_text(encoding="utf-8")
        except (UnicodeDecodeError, FileNotFoundError):
            continue


def test_no_file_names_a_registry_or_a_machine():
    found = [
        (name, one)
        for name, text in committed()
        for one in (*(host for host in HOSTS if host in text), *HOMES.findall(text))
    ]
    assert found == []


# where a number is ours, every file says so in the same two words
OURS = re.compile(r"\b(?:own|our)(?:\n# | )(?:rule|choice)\b")
NOT_OURS = ("the study's own rule",)  # the Peak Water Demand Study's


@pytest.mark.parametrize("module", [pytest.param(one, id=one.name) for one in modules()])
def test_a_number_that_is_ours_is_called_our_choice(module):
    text = "\n".join(module.lines)
    for words in NOT_OURS:
        text = re.sub(words, "", text, flags=re.IGNORECASE)
    assert {" ".join(one.replace("#", "").split()) for one in OURS.findall(text)} <= {"our choice"}
