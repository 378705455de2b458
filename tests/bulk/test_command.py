"""The command line: every command, what it tells and to whom, and how it ends."""

import csv
import io
import json
import os
import pickle
import signal
import subprocess
import sys
import time

import pytest

from calc import __main__ as command
from calc.bulk import jobs as bulk_jobs
from calc.bulk.answers import FAILED, Wanted
from calc.sheets import KEYS
from calc.site import file
from calc.site.demo import alder_terrace
from tests.house.modules import ROOT
from tests.site.made_sites import workable

HOUSES = "id,climb,length,note\n1,12 m,120 m,=1+1\n2,x,120 m,-3.5\n3,40 ft,,@b\n4,9,100,c\n"
PYTHON = [sys.executable, "-m", "calc"]


def ran(*words, given=None, cwd=ROOT):
    return subprocess.run(
        [*PYTHON, *map(str, words)], cwd=cwd, input=given, capture_output=True,
        env={**os.environ, "PYTHONPATH": str(ROOT), "PYTHONIOENCODING": "ascii"},
    )  # fmt: skip


@pytest.fixture
def run(capsys):
    """(exit code, output, what is told beside it) of a command in this process."""

    def runs(*words):
        try:
            code = command.main(map(str, words))
        except SystemExit as end:
            code = end.code
        return code, *capsys.readouterr()

    return runs


@pytest.fixture
def houses(tmp_path):
    path = tmp_path / "houses.csv"
    path.write_bytes(HOUSES.encode())
    return path


@pytest.fixture
def many(tmp_path):
    """Forty sites, the eleventh of which is none."""
    path = tmp_path / "sites.jsonl"
    lines = [json.dumps(file.to_data(workable(seed))) for seed in range(40)]
    lines[10] = '{"format": "other"}'
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return path


def table(text):
    return list(csv.DictReader(io.StringIO(text, newline=""), strict=True))


# What there is --------------------------------------------------------------------------------


def test_the_sheets_and_their_fields_are_listed(run):
    code, out, _ = run("sheets", "--format", "csv")
    assert code == 0 and [row["key"] for row in table(out)] == list(KEYS)
    assert run("sheets")[1].startswith("reach  ")
    code, out, _ = run("fields", "reach", "--format", "json", "--system", "us")
    climb = next(one for one in json.loads(out) if one["key"] == "climb")
    assert climb["quantity"] == "length" and "ft" in climb["allowed"] and "ft" in climb["default"]
    assert "Climb from pump to outlet" in run("fields", "reach")[1]


@pytest.mark.parametrize("key", KEYS)
def test_the_fields_of_every_sheet_are_listed_in_every_format(run, key):
    for form in ("text", "csv", "json", "jsonl"):
        code, out, _ = run("fields", key, "--format", form)
        assert code == 0 and out


@pytest.mark.parametrize("name", ["", "rows", "site", "sites", "enquiries", "work", "fields"])
def test_help_shows_examples_and_exit_codes(run, name):
    code, out, _ = run(*([name] if name else []), "--help")
    assert code == 0 and "python -m calc rows reach houses.csv" in out and "exit codes: 0" in out


# One case -------------------------------------------------------------------------------------


def test_one_case_is_told_in_words_with_its_link(run):
    code, out, told = run("work", "reach", "climb=40 ft", "length=400 ft", "--system", "us")
    assert (code, told) == (0, "")
    assert "psi" in out and "Caution: " in out and "Assumed, from the example: " in out
    assert "Link: head/#v=1&u=us&climb=40ft&length=400ft&c=" in out


def test_one_case_is_one_object_of_json_or_one_row(run):
    words = ("work", "reach", "climb=12m")
    assert json.loads(run(*words, "--format", "json")[1])["verdict"] == "Works"
    (row,) = table(run(*words, "--format", "csv", "--fields", "Water speed")[1])
    assert row["climb"] == "12m" and row["Water speed, unit"] == "m/s" and float(row["main_value"])


def test_the_example_is_called_one(run):
    assert "invented numbers, not yours" in run("work", "reach")[1]


@pytest.mark.parametrize(
    "words, code, told",
    [
        (["work", "reach", "climb=3 kg"], 1, "Write m, ft or cm"),
        (["work", "reach", "clim=3"], 2, "Did you mean climb?"),
        (["work", "reach", "climb"], 2, "field=value"),
        (["work", "reach", "climb=3", "climb=4"], 2, "given twice"),
        (["work", "reech"], 2, "Did you mean reach?"),
        (["rows", "reach", "nowhere.csv"], 2, "nowhere.csv"),
        (["rows", "reach", "."], 2, "python -m calc rows"),
        (["rows", "reach", "-", "--jobs", "0"], 2, "from 1 to"),
        (["sites", "-", "--sheets", "keep_up,nothing"], 2, "There is no sheet “nothing”"),
        (["sites", "-", "--format", "text"], 2, "Choose csv, json or jsonl"),
        ([], 2, "COMMAND"),
    ],
)
def test_what_is_wrong_is_said_with_its_exit_code(run, words, code, told):
    found, out, error = run(*words)
    assert found == code and told in error + out


# A row each -----------------------------------------------------------------------------------


def test_bad_rows_are_told_by_number_and_the_rest_is_done(run, houses):
    code, out, told = run("rows", "reach", houses)
    rows = table(out)
    assert code == 1 and [row["verdict"] for row in rows] == ["Works", "", "", "Works"]
    assert [bool(row["error"]) for row in rows] == [False, True, True, False]
    assert [row["id"] for row in rows] == ["1", "2", "3", "4"]
    assert told.splitlines()[1:] == [
        "row 2 (line 3): Climb from pump to outlet must be a number, such as 12.5",
        "row 3 (line 4): Enter the length of pipe",
        "4 rows, 2 bad",
    ]
    assert told.startswith("Passed along, not read: id, note\n")


def test_what_a_spreadsheet_would_work_out_is_guarded_and_numbers_are_not(run, houses):
    rows = table(run("rows", "reach", houses)[1])
    assert [row["note"] for row in rows] == ["'=1+1", "-3.5", "'@b", "c"]


def test_quiet_tells_nothing_but_the_exit_code(run, houses):
    code, _, told = run("rows", "reach", houses, "--quiet")
    assert (code, told) == (1, "")


def test_an_output_read_again_gives_the_same_output(run, houses, tmp_path):
    again = tmp_path / "again.csv"
    run("rows", "reach", houses, "--out", again)
    code, out, _ = run("rows", "reach", again)
    assert code == 1 and out.encode() == again.read_bytes()


def test_a_csv_is_written_as_it_was_read_with_its_separator_and_mark(tmp_path):
    path = tmp_path / "houses.csv"
    path.write_bytes("\ufeffclimb;length;Straße\r\n12,5 m;100 m;ü\r\n".encode())
    done = ran("rows", "reach", path)
    assert done.returncode == 0, done.stderr
    assert done.stdout.startswith("\ufeffclimb;length;Straße;verdict;".encode())
    assert done.stdout.count(b"\r\n") == 2 and ";ü;Works;".encode() in done.stdout


def test_a_csv_of_wide_characters_is_read_and_one_that_is_not_unicode_refused(tmp_path, run):
    path = tmp_path / "houses.csv"
    path.write_bytes("climb\tlength\r\n12 m\t100 m\r\n".encode("utf-16"))
    assert run("rows", "reach", path)[0] == 0
    path.write_bytes("climb,note\n12 m,Straße\n".encode("latin-1"))
    code, _, told = run("rows", "reach", path)
    assert code == 2 and "Save it as “CSV UTF-8”" in told


def test_rows_come_and_go_as_lines_of_json_too(run, tmp_path):
    path = tmp_path / "rows.jsonl"
    path.write_text('{"climb": 12, "length": "100 m"}\n{}\n[1]\n{"climb": "x"}\n')
    code, out, _ = run("rows", "reach", path, "--format", "jsonl")
    found = [json.loads(line) for line in out.splitlines()]
    assert code == 1 and [one["number"] for one in found] == [1, 2, 3, 4]
    assert [bool(one["error"]) for one in found] == [False, True, True, True]
    assert found[0]["given"] == {"climb": 12, "length": "100 m"}
    assert json.loads(run("rows", "reach", path, "--format", "json")[1])[0] == found[0]


def test_a_header_without_a_field_is_wrong_use_and_leaves_the_output_alone(run, tmp_path):
    path, out = tmp_path / "houses.csv", tmp_path / "out.csv"
    path.write_text("name,note\na,b\n")
    out.write_text("before")
    code, _, told = run("rows", "reach", path, "--out", out)
    assert code == 2 and "No column is named after a field of reach" in told
    assert out.read_text() == "before"
    assert run("rows", "reach", path, "--out", path)[0] == 2 and path.read_text()[:4] == "name"


# Sites ----------------------------------------------------------------------------------------


def test_a_site_file_is_worked_out_on_all_it_fills(run, tmp_path):
    path = tmp_path / "site.json"
    path.write_text(file.write(alder_terrace()), encoding="utf-8")
    code, out, _ = run("site", path)
    assert code == 0 and len(json.loads(out)["answers"]) > 12
    text = run("site", path, "--format", "text", "--sheets", "keep_up,reach")[1]
    assert text.startswith("Alder Terrace\n\nWill it keep up?\nDoes not work: ")
    assert "Fix: " in text and text.count("Link: ") == 2
    path.write_text("{oops")
    assert run("site", path)[0] == 2
    path.write_text("{}")
    code, out, told = run("site", path, "--format", "text")
    assert code == 1 and "This is not a site" in out and told == ""


def test_sites_are_the_same_in_one_process_and_in_two_and_in_their_order(many):
    one, two = (ran("sites", many, "--jobs", jobs) for jobs in (1, 2))
    assert one.returncode == two.returncode == 1
    assert one.stdout == two.stdout and one.stderr == two.stderr
    found = [json.loads(line) for line in one.stdout.splitlines()]
    assert [one["number"] for one in found] == list(range(1, 41))
    assert found[10]["error"] and sum(bool(one["error"]) for one in found) == 1
    assert [one["name"] for one in found[:3]] == ["Made 0", "Made 1", "Made 2"]
    assert b"site 11 (line 11): This is not a site" in one.stderr and b"\r" not in one.stderr


def test_sites_in_a_csv_have_a_row_for_each_sheet(run, many):
    rows = table(run("sites", many, "--format", "csv", "--sheets", "keep_up,reach")[1])
    assert [row["sheet"] for row in rows[:2]] == ["keep_up", "reach"] and len(rows) == 79
    assert rows[20]["error"] and rows[20]["number"] == "11"


@pytest.mark.skipif(os.name != "posix", reason="split and xargs")
def test_pieces_spread_by_other_tools_are_together_what_one_run_gives(many):
    spread = (
        "split -l 15 sites.jsonl piece. && ls piece.* | xargs -P 2 -I {} "
        f"sh -c '\"{sys.executable}\" -m calc sites {{}} --jobs 1 --quiet --out {{}}.done || true'"
        " && cat piece.*.done"
    )
    done = subprocess.run(
        spread, shell=True, cwd=many.parent, capture_output=True,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
    )  # fmt: skip
    assert done.returncode == 0, done.stderr
    whole = ran("sites", many, "--jobs", "1").stdout.splitlines()
    pieces = done.stdout.splitlines()
    assert len(pieces) == len(whole) == 40

    def unnumbered(line):
        record = json.loads(line)
        return {key: record[key] for key in record if key not in ("number", "line")}

    assert list(map(unnumbered, pieces)) == list(map(unnumbered, whole))


# Letters --------------------------------------------------------------------------------------


def test_letters_are_read_and_answered_or_asked_about(run, tmp_path):
    path = tmp_path / "mails.csv"
    path.write_text(
        'id,text,from\na,"Our spring is 38 m above the house, 420 m of 32 mm PE 100 SDR 11 pipe, '
        'no pump.\nIt gives 4 litres a minute.\nTwo showers, both open together.",=x\n'
        "b,The house is 22 m above the well.,y\nc,,z\n"
    )
    code, out, told = run("enquiries", path)
    rows = table(out)
    assert code == 1 and "letter 3 (line 6): There is nothing to read" in told
    assert [row["id"] for row in rows] == ["a", "b", "c"] and rows[0]["from"] == "'=x"
    assert "text" not in rows[0] and "Length of the pipe: 420 m" in rows[0]["facts"]
    assert (rows[0]["sheet"], rows[0]["verdict"]) == ("gravity", "Does not work")
    assert rows[1]["verdict"] == "" and rows[1]["ask"] and "#v=1" in rows[1]["links"]
    path.write_text("id,letter\n1,x\n")
    assert run("enquiries", path)[0] == 2


# How it ends ----------------------------------------------------------------------------------


@pytest.mark.skipif(os.name != "posix", reason="signals")
@pytest.mark.parametrize("jobs", ["1", "2"])
def test_interrupted_what_is_done_is_written_and_whole(tmp_path, jobs):
    path, out = tmp_path / "sites.jsonl", tmp_path / "out.json"
    line = json.dumps(file.to_data(workable(1))) + "\n"
    path.write_text(line * 20_000)
    words = ["sites", path, "--jobs", jobs, "--format", "json", "--out", out]
    started = subprocess.Popen([*PYTHON, *map(str, words)], cwd=ROOT, stderr=subprocess.PIPE)
    until = time.monotonic() + 120
    while not (out.exists() and out.stat().st_size > 20_000) and time.monotonic() < until:
        time.sleep(0.05)
    started.send_signal(signal.SIGINT)
    _, told = started.communicate(timeout=120)
    found = json.loads(out.read_text())
    assert started.returncode == 130 and 0 < len(found) < 20_000
    assert told.decode() == f"Interrupted: {len(found)} done and written.\n"


@pytest.mark.skipif(os.name != "posix", reason="pipes")
def test_a_reader_that_leaves_ends_it_in_silence(many):
    started = subprocess.Popen(
        [*PYTHON, "sites", str(many), "--jobs", "1", "--quiet"], cwd=ROOT,
        stdout=subprocess.PIPE, stderr=subprocess.PIPE,
    )  # fmt: skip
    started.stdout.readline()
    started.stdout.close()
    assert started.stderr.read() == b"" and started.wait(120) == 141


def test_standard_input_is_read():
    done = ran("rows", "reach", "-", given=b"climb\n12 m\n")
    assert done.returncode == 0 and b"Works" in done.stdout


def test_where_our_own_code_breaks_down_one_row_is_lost_and_the_rest_done(run, houses, monkeypatch):
    real = bulk_jobs.rows.worked

    def breaks(key, given, wanted):
        if given["id"] == "1":
            raise ZeroDivisionError("planted")
        return real(key, given, wanted)

    monkeypatch.setattr(bulk_jobs.rows, "worked", breaks)
    code, out, told = run("rows", "reach", houses, "--jobs", "1")
    rows = table(out)
    assert code == 1 and rows[0]["error"] == FAILED and rows[3]["verdict"] == "Works"
    assert "ZeroDivisionError: planted" in told


@pytest.mark.parametrize("total, text", [(0, "7 done, 2 bad"), (14, "] 7 of 14, 2 bad")])
def test_a_bar_says_how_far_it_is(capsys, total, text):
    bar = command.Bar(True, False, total, done=6, bad=1)
    bar.step(True)
    shown = capsys.readouterr().err
    assert shown.startswith("\r") and shown.endswith(text)
    assert not total or shown.count("#") == shown.count(".") == command.WIDE // 2
    bar.clear()
    assert capsys.readouterr().err.endswith("\r\033[K")


def test_no_bar_is_drawn_where_nobody_looks(capsys):
    bar = command.Bar(False, False, 10)
    bar.step(False)
    bar.clear()
    assert capsys.readouterr().err == ""


def test_a_job_can_be_handed_to_a_process_that_starts_anew():
    job = bulk_jobs.Job(bulk_jobs.SITES, Wanted())
    assert pickle.loads(pickle.dumps(job)) == job
    assert bulk_jobs.batch.__module__ == "calc.bulk.jobs"  # which "__main__" would not be there
