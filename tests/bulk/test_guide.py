"""What the guide shows is what the commands print."""

import os
import re
import shutil
import subprocess
import sys

import pytest

from calc.bulk import cells
from calc.bulk.answers import Wanted
from tests.house.modules import ROOT

TEXT = (ROOT / "docs" / "bulk.md").read_text(encoding="utf-8")
FILES = re.findall(r"`([\w.]+\.csv)`:\n\n```csv\n(.*?)^```$", TEXT, re.MULTILINE | re.DOTALL)
SHOWN = re.findall(r"^```sh\n(.*?)^```\n\n```text\n(.*?)^```$", TEXT, re.MULTILINE | re.DOTALL)

pytestmark = pytest.mark.skipif(os.name != "posix", reason="a shell, cut and head")


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    """A folder with the guide's files, in which ``python`` is this one."""
    made = tmp_path_factory.mktemp("bulk")
    for name, text in FILES:
        (made / name).write_text(text, encoding="utf-8")
    shutil.copy(ROOT / "docs" / "demo" / "alder-terrace.json", made)
    python = made / "python"
    python.write_text(f'#!/bin/sh\nexec "{sys.executable}" "$@"\n')
    python.chmod(0o755)
    return made


def printed(command, folder):
    """What a command prints, and what it tells beside it."""
    path = f"{folder}{os.pathsep}{os.environ['PATH']}"
    env = {**os.environ, "PYTHONPATH": str(ROOT), "PATH": path}
    done = subprocess.run(command, shell=True, cwd=folder, env=env, capture_output=True)
    return (done.stderr + done.stdout).decode().replace("\r\n", "\n")


def test_what_every_command_of_the_guide_prints_is_what_stands_below_it(folder):
    found = [(command, printed(command, folder)) for command, _ in SHOWN]
    assert found == SHOWN and len(SHOWN) >= 7


def test_every_column_of_an_answer_is_in_the_guides_table():
    told = re.findall(r"^\| (`.*?) \|", TEXT.split("### Columns of the answer")[1], re.MULTILINE)
    names = [name for cell in told for name in re.findall(r"`(\w+)`", cell)]
    assert names[: len(cells.answer_columns(Wanted()))] == cells.answer_columns(Wanted())


def test_its_function_for_other_engines_answers_a_line():
    room = {}
    (code,) = re.findall(r"^```python\n(.*?)^```$", TEXT, re.MULTILINE | re.DOTALL)
    exec(compile(code, "bulk.md", "exec"), room)  # noqa: S102, our own text
    line = (ROOT / "docs" / "demo" / "alder-terrace.json").read_text(encoding="utf-8")
    assert '"verdict": "Does not work"' in room["answer"](line)


def test_the_pieces_of_the_guide_run(folder):
    (pieces,) = re.findall(r"^```sh\n(split .*?)^```$", TEXT, re.MULTILINE | re.DOTALL)
    line = " ".join((folder / "alder-terrace.json").read_text(encoding="utf-8").split()) + "\n"
    (folder / "sites.jsonl").write_text(line * 3, encoding="utf-8")
    assert printed(pieces.replace("-l 200", "-l 2"), folder).count('"Does not work"') == 3
