"""Our links after what mail programs do to them: put together again, or said to be cut."""

import base64
import functools
import quopri
from email import policy
from email.message import EmailMessage
from html import escape
from urllib.parse import quote

import pytest

from calc.desk import mail_links
from calc.sheets import sheet as find_sheet
from calc.site import link
from calc.site.demo import with_hill_tank
from calc.site.pack import pack
from tests.desk.sites import asked
from tests.site.made_sites import workable

COUNT = 200  # random sites
HELLO, BYE = "Good morning,\n\nplease look at this:\n\n", "\n\nKind regards\nRosa Invented\n"


@functools.cache
def fragments():
    made = [with_hill_tank(), *(workable(seed) for seed in range(COUNT - 1))]
    return tuple(
        link.of_site(site.system, pack(site), "", ("", "o", "h.us")[at % 3])
        for at, site in enumerate(made)
    )


def url(fragment):
    return f"https://water.example/tools/keep-up/#{fragment}"


def wrapped(text, width, end=""):
    return f"{end}\n".join(text[at : at + width] for at in range(0, len(text), width))


def quoted(text, sign="> "):
    return "\n".join(sign + line for line in text.splitlines())


def composed(body, cte, html="", **settings):
    message = EmailMessage(policy=policy.SMTP.clone(**settings))
    message["From"], message["To"] = "rosa@farm.example", "desk@water.example"
    message["Subject"] = "Re: the pump"
    message.set_content(body, cte=cte)
    if html:
        message.add_alternative(html, subtype="html")
    return message


def source(message):
    return message.as_bytes().decode("utf-8", "surrogateescape")


def body_of(message):
    return source(message).split("\r\n\r\n", 1)[1]


MANGLED = {
    "as it is": url,
    "in a sentence": lambda one: f"See {url(one)}. It is good (or {url(one)}), isn’t it?",
    "wrapped at 72": lambda one: HELLO + wrapped(url(one), 72) + BYE,
    "wrapped at 76": lambda one: HELLO + wrapped(url(one), 76) + BYE,
    "wrapped anywhere, the sign of its start too": lambda one: wrapped(url(one), 35),
    "flowed": lambda one: HELLO + wrapped(url(one), 70, " ") + BYE,
    "quoted": lambda one: quoted(HELLO + wrapped(url(one), 70) + BYE),
    "quoted three times": lambda one: quoted(HELLO + wrapped(url(one), 66) + BYE, "> > >"),
    "with other signs of quoting": lambda one: quoted(wrapped(url(one), 66), " | "),
    "with empty lines between": lambda one: wrapped(url(one), 70, "\n"),
    "in angle brackets": lambda one: f"<{url(one)}>",
    "in quotes": lambda one: f'“{url(one)}”, "{url(one)}"',
    "followed by a comma": lambda one: f"{url(one)}, and then",
    "escaped as HTML": lambda one: escape(url(one)),
    "escaped twice": lambda one: escape(escape(url(one))),
    "host in capitals": lambda one: url(one).replace("https://water.example", "HTTPS://WATER.EXAMPLE"),
    "with spaces that show nothing": lambda one: "\u200b".join((url(one)[:60], url(one)[60:90],
                                                                url(one)[90:])),
    "with soft hyphens": lambda one: "\u00ad".join((url(one)[:50], url(one)[50:])),
    "spelled once more": lambda one: quote(url(one), safe=":/"),
    "led through another address": lambda one: (
        f"https://safe.example/check?id=7&url={quote(url(one), safe='')}&sig=a1b2c"),
    "led through two": lambda one: "https://one.example/?to=" + quote(
        f"https://two.example/?u={quote(url(one), safe='')}&x=1", safe="") + "&y=2",
    "led through another and wrapped": lambda one: wrapped(
        f"https://safe.example/?u={quote(url(one), safe='')}&s=1", 76),
    "soft breaks": lambda one: quopri.encodestring((HELLO + url(one) + BYE).encode()).decode(),
    "soft breaks, quoted": lambda one: quoted(
        quopri.encodestring((HELLO + url(one) + BYE).encode()).decode()),
    "base64": lambda one: base64.encodebytes((HELLO + url(one) + BYE).encode()).decode(),
    "a mail in quoted-printable": lambda one: source(
        composed(HELLO + url(one) + BYE, "quoted-printable")),
    "a mail in base64": lambda one: source(composed(HELLO + url(one) + BYE, "base64")),
    "a mail in 8 bit": lambda one: source(composed(HELLO + wrapped(url(one), 78) + BYE, "8bit")),
    "a mail in 7 bit": lambda one: source(composed(HELLO + wrapped(url(one), 78) + BYE, "7bit")),
    "a mail's body alone": lambda one: body_of(
        composed(HELLO + url(one) + BYE, "quoted-printable")),
    "a mail with an HTML part alone whole": lambda one: source(composed(
        HELLO + "see the link" + BYE, "7bit",
        f'<html><body><p>Hi</p><a href="{escape(url(one))}">the page</a></body></html>')),
    "HTML as it is": lambda one: (
        f'<p>Hi</p><a href="{escape(url(one))}">{escape(url(one)[:40])}…</a>'),
    "HTML, its words only": lambda one: f"<p>Hi<br>{escape(url(one))}<wbr></p>",
}  # fmt: skip


@pytest.mark.parametrize("how", MANGLED)
def test_two_hundred_links_come_back_as_they_were(how):
    for fragment in fragments():
        found = [one for one in mail_links.find(MANGLED[how](fragment)) if one.whole]
        assert [one.fragment for one in found] == [fragment]


@pytest.mark.parametrize("how", ["as it is", "quoted", "led through another address"])
def test_the_page_of_a_link_is_told(how):
    (one,) = mail_links.find(MANGLED[how](fragments()[3]))
    assert one.page == "keep-up"


def test_a_forwarded_mail_and_a_reply_above_it():
    fragment = fragments()[5]
    inner = composed(HELLO + url(fragment) + BYE, "quoted-printable")
    outer = composed("Look what she sent.\n", "7bit")
    outer.add_attachment(inner)
    (one,) = mail_links.find(source(outer))
    assert one.fragment == fragment
    reply = "Yes!\n\nOn Monday Rosa wrote:\n" + quoted(HELLO + wrapped(url(fragment), 72) + BYE)
    (one,) = mail_links.find(source(composed(reply, "quoted-printable")))
    assert one.fragment == fragment


def test_two_links_of_one_mail_are_both_found_and_each_once():
    first, second = fragments()[1], fragments()[2]
    text = HELLO + wrapped(url(first), 72) + "\n" + wrapped(url(second), 72) + BYE
    html = f'<a href="{escape(url(first))}">a</a> <a href="{escape(url(second))}">b</a>'
    found = mail_links.find(source(composed(text, "7bit", html)))
    assert [one.fragment for one in found] == [first, second]


@pytest.mark.parametrize("cut", [1, 3, 9, 40, 200])
def test_a_link_that_lost_its_end_is_said_to_be_cut(cut):
    for fragment in fragments()[:20]:
        found = mail_links.find(HELLO + url(fragment[:-cut]) + BYE)
        assert [one.whole for one in found] == [False]
        assert mail_links.told(found)[0].startswith(mail_links.CUT)


def test_a_line_lost_out_of_the_middle_is_no_link():
    for fragment in fragments()[:20]:
        lines = wrapped(url(fragment), 72).splitlines()
        found = mail_links.find("\n".join([*lines[:2], *lines[3:]]))
        assert not any(one.whole for one in found)


def test_one_changed_sign_is_noticed():
    for fragment in fragments()[:20]:
        at = len(fragment) // 2
        other = fragment[:at] + ("x" if fragment[at] != "x" else "y") + fragment[at + 1 :]
        assert not any(one.whole for one in mail_links.find(url(other)))


@pytest.mark.parametrize(
    "text", ["", "Hello", "https://water.example/keep-up/", "#v", "v=1&c=abcde"]
)
def test_a_text_without_a_link_says_so(text):
    assert mail_links.told(mail_links.find(text)) == [mail_links.NONE]


def test_a_link_in_a_mail_beside_a_cut_one_does_not_hide_it():
    text = f"{url(fragments()[1])}\n\n{url(fragments()[2][:-4])}\n"
    found = mail_links.find(text)
    assert [one.whole for one in found] == [True, False]


def test_the_desk_tells_what_it_found():
    made = asked("reply", mail=quoted(HELLO + wrapped(url(fragments()[0]), 70) + BYE))
    (one,) = made["found"]
    assert one["name"] == "Alder Terrace"
    assert link.read(one["fragment"], find_sheet("reach")).trusted
    lost = asked("reply", mail=url(fragments()[0])[:300])
    assert (lost["found"], len(lost["said"])) == ([], 1)


def test_a_long_mail_is_read_in_no_time():
    noise = "\n".join(f"> {'x' * 60} &c=abcde #v=1 {at}" for at in range(3000))
    assert not any(one.whole for one in mail_links.find(noise))
