"""Every worked example in a docstring gives what it says."""

import doctest
import importlib

import pytest

from tests.house.modules import modules

WITH_EXAMPLES = [one.name for one in modules() if any(">>> " in line for line in one.lines)]


@pytest.mark.parametrize("name", WITH_EXAMPLES)
def test_examples_in_docstrings_hold(name):
    found = doctest.testmod(importlib.import_module(name))
    assert found.attempted > 0
    assert found.failed == 0


def test_there_are_examples_in_many_modules():
    assert len(WITH_EXAMPLES) > 10
