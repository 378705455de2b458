"""Each fact read in the many ways it may be said, and traps that hold none."""

import pytest

from calc.site.enquiry import read
from tests.enquiries.phrased import NOT_SAID, SAID
from tests.enquiries.score import same


def expected(path, value):
    if path.endswith(".pipe"):
        return {"path": path, "value": value}
    number, _, unit = value.partition(" ")
    return {"path": path, "value": number, "unit": unit}


@pytest.mark.parametrize(
    "path, value, text", [(path, value, text) for path, value, texts in SAID for text in texts]
)
def test_it_is_read_however_it_is_said(path, value, text):
    told = read(text).told
    assert any(one.path == path and same(expected(path, value), one) for one in told), told


@pytest.mark.parametrize("path, text", [(path, text) for path, texts in NOT_SAID for text in texts])
def test_what_is_of_another_thing_is_left_alone(path, text):
    assert not [one for one in read(text).told if one.path == path and one.text != "0"]
