"""One term for one thing, and plain sentences: what readers meet holds no phrase that was replaced.

The table of terms is ``calc.page.terms``; the phrases are our choice, each with what stands in its
place.
"""

import re

import pytest

from calc.page.terms import TERMS
from tests.house.modules import ROOT, modules
from tests.house.test_words import sentences

PHRASES = {
    r"\bmend(s|ed|ing)?\b": "repair, correct",
    r"\bcures?\b": "fix",
    r"\b[Ss]hut (line|tap|valve)": "closed valve, taps off",
    r"(?<![Tt]here )\bis no (?!faster)[a-z]": "is not a",
    r"\bwould do\b|\b(?:that|size|pipe|pump|one) does it\b": "works, is enough",
    r"\blicensed hands\b": "a licensed person, to local codes",
    r"\bcontent with\b|\blikes\b|[Hh]ouses like\b": "needs, works from",
    r"\b(lines|pipes|taps) want\b": "need",
    r"\btaps? (is|are) shut\b|\btap shuts\b": "closed",
    r"(?<!in )\b(trough|cabin|tank|pump)s? stands?\b": "is",
    r"\bstands? in th(is|e) (link|form|pipe)\b": "is in this link",
    r"\bstands? beside it\b|\bThe level stands\b": "is shown too; the level stays",
    r"\b[Aa]ir charge\b(?!,)": "pre-charge",
    r"\bpressure reducer\b|\breducer\.": "pressure-reducing valve",
    r"\bstanding pressure\b": "static pressure",
    r"^Most (?!valves)[a-z]|^(Highest|Largest) (pressure|flow|voltage|current|power)": "Maximum",
    r"\bstarts a second\b|^Starts an hour": "per hour",
    r"\bthirsty\b|\bthrifty\b|\bdearer?\b": "high-flow, saving, costly",
    r"\bup there\b": "name the thing",
    r"as much comes as goes|what takes most": "name the noun",
    r"[Tt]he bottleneck is": "The largest loss is",
    r"It wants\b|[Ww]anted pressure": "needs",
    r"[Ss]een? it mended|Go on row by row|Open then\b|Also in it": "Try this fix; Open after",
    r"Pumps like it": "Identical pumps",
    r"worst off": "weakest",
    r"hammers\b": "causes water hammer",
    r"Stop tap": "Globe valve",
    r"Yes: .* is left": "You get",
    r"arrives, but weakly": "Water arrives below the pressure you need",
    r"and no higher": "at most",
    r"left at the top\b|reaches the top\b": "name the outlet",
    r"filled openly": "Open trough or tank",
    r"as hot as it gets": "at its hottest",
    r"[Mm]ost the pump gives|Most starts": "Maximum",
    r"stands in the water": "submersible",
    r"gives itself back": "found by trial",
    r"[Tt]he line withstands": "The pipe holds",
    r"Mend the leak": "Repair the leak",
    r"[Ww]orked example stands": "The example is shown instead",
    r"leaks alone start": "leaks start",
    r"by the sums it can": "on paper",
    r"happens by itself": "open by chance",
    r"holds nothing any more": "can no longer hold",
    r"\bmaker('s|s)?\b": "manufacturer",
}
# where a word is meant otherwise, or is the name of the thing in the code
NAMED = {
    "docs/changes.md": {r"\bmend(s|ed|ing)?\b", r"\bcures?\b"},  # for those who develop
}


def texts():
    """(file, line, text) of all that a reader meets."""
    for path in sorted((ROOT / "docs").glob("*.md")):
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            yield f"docs/{path.name}", number, line
    for path in sorted((ROOT / "docs" / "assets").glob("*.js")):
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            for text in re.findall(r'"([^"]*)"|`([^`]*)`', line):
                yield f"docs/assets/{path.name}", number, "".join(text)
    for module in modules():
        for number, text in sentences(module.tree):
            yield module.name, number, text


# terms name what they replace; a table of the words of letters is read by nobody
NO_TEXTS = {"calc.page.terms", "calc.site.enquiry_usual_table"}
TEXTS = [one for one in texts() if one[0] not in NO_TEXTS]


@pytest.mark.parametrize("phrase", PHRASES)
def test_no_phrase_that_was_replaced(phrase):
    found = [
        (file, line, text.strip()[:90])
        for file, line, text in TEXTS
        if re.search(phrase, text) and phrase not in NAMED.get(file, ())
    ]
    assert found == [], PHRASES[phrase]


@pytest.mark.parametrize("term", [one for one in TERMS if one.replaces], ids=lambda t: t.word)
def test_no_word_that_a_term_replaces(term):
    pattern = re.compile("|".join(rf"\b{re.escape(word)}\b" for word in term.replaces), re.I)
    found = [(f, n, t.strip()[:90]) for f, n, t in TEXTS if pattern.search(t)]
    assert found == [], term.word
