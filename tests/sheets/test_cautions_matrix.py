"""What can hurt, and on which pages it is said: a page that lacks its caution fails here."""

import re
from dataclasses import dataclass

import pytest

from calc.sheets import KEYS, sheet


@dataclass(frozen=True)
class Topic:
    """words: pattern that one caution of each page must hold; why: those pages."""

    name: str
    words: str
    pages: str
    why: str


TOPICS = (
    Topic(
        "lightning", r"lightning",
        "panels battery direct panel_place cable well hill_tank day keep_up pump_match",
        "metal out of doors, high up, or a long cable to a pump",
    ),
    Topic(
        "frost and drain-back", r"(?i)frost.*\bdrain|\bdrain.*frost",
        "reach keep_up pipe suction tank pressure_tank pump_match surge gravity well hill_tank "
        "drip sprinkler direct day fault",
        "a pipe, a pump or a tank that stands full of water out of doors",
    ),
    Topic(
        "confined spaces", r"confined space|Do not enter a well or tank",
        "keep_up pressure suction tank pump_match gravity well hill_tank direct day fault",
        "a well, a tank or a spring box that somebody may climb into",
    ),
    Topic(
        "chlorinating", r"chlorinate",
        "well suction tank hill_tank day fault",
        "work inside what holds drinking water",
    ),
    Topic(
        "backflow and air gaps", r"backflow|air gap",
        "reach keep_up pipe demand tank gravity hill_tank drip sprinkler direct day",
        "a hose, trough, drip line or tank at the end of the pipe",
    ),
    Topic(
        "polluted water drawn in", r"(draw|suck)s? in [^.]*(dirty|polluted) water",
        "keep_up reach surge gravity suction pump_match day fault",
        "a pipe that may be below the pressure of what is about it",
    ),
    Topic(
        "digging", r"\b(before you dig|Before you dig)\b",
        "reach keep_up pipe suction pump_match surge gravity well hill_tank drip sprinkler "
        "direct panel_place cable day fault",
        "a pipe or a cable that is buried",
    ),
    Topic(
        "iron and sediment", r"Iron.*sediment.*water tested",
        "well tank",
        "water out of the ground, and where what it carries settles",
    ),
    Topic(
        "scalding", r"\b[Ss]cald",
        "hot_water",
        "water hot enough to burn",
    ),
    Topic(
        "lifting", r"\b[Ll]ift (a pump|a panel|a battery|panels|batteries|tanks|it|them)\b",
        "well suction tank hill_tank panels battery direct panel_place day",
        "a pump out of its well, a panel, a battery or a tank to be carried",
    ),
)  # fmt: skip
CASES = [pytest.param(topic, key, id=f"{topic.name}-{key}")
         for topic in TOPICS for key in topic.pages.split()]  # fmt: skip


@pytest.mark.parametrize("topic, key", CASES)
def test_a_page_says_what_can_hurt_there(topic, key):
    assert any(re.search(topic.words, one) for one in sheet(key).cautions), topic.why


def test_every_page_has_a_topic():
    """A new page says here what can hurt there."""
    asked = {key for topic in TOPICS for key in topic.pages.split()}
    assert asked == set(KEYS)


@pytest.mark.parametrize("key", KEYS)
def test_no_caution_is_said_twice_on_a_page(key):
    cautions = sheet(key).cautions
    assert len(set(cautions)) == len(cautions)
    digging = next(topic for topic in TOPICS if topic.name == "digging")
    assert sum(bool(re.search(digging.words, one)) for one in cautions) <= 1


@pytest.mark.parametrize("key", KEYS)
def test_a_caution_is_short_enough_to_be_read_before_work(key):
    # 220 characters, two lines and a half of a printed page; our choice
    assert all(len(one) <= 220 for one in sheet(key).cautions)
