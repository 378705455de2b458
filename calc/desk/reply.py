"""The reply to a customer: the whole site's work as a letter to copy, text and HTML.

What the page asks goes through ``handle``; the letter is made of the parts' own answers.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from calc.desk import asked, blocks, mail_links, may_change, pairs
from calc.desk.opened import opened
from calc.desk.site_letter import letter
from calc.desk.work import work_out
from calc.errors import InputError
from calc.sheets import sheet as find_sheet
from calc.site import link
from calc.site.pack import pack

if TYPE_CHECKING:
    from calc.desk.work import Work

Data = dict[str, Any]


def handle(request: Data) -> Data:
    """Answer one request: {"do": "reply", "fragment", "system", "base": address of the site's root,
    "flat": pages end in .html, "may": codes or None for the link's own, "asks": whether to weigh
    what is not known}, or with "mail" a pasted text whose links are looked for.

    Returns {"text", "html", "word", "level", "name", "example", "system", "fragment", "address",
    "groups", "may", "said"}, or of a mail {"found", "said"}.
    Raises InputError where the link cannot be read.
    """
    if "mail" in request:
        return _mail(request)
    found = opened(request.get("fragment", ""), request.get("system", ""))
    work = work_out(found.site, found.system)
    codes = found.may.split(".") if request.get("may") is None else request["may"]
    may = may_change.written(codes)
    fragment = link.of_site(work.system, work.packed, "", may)
    address = request.get("base", "") + _page(work, request.get("flat", False)) + "#" + fragment
    questions = asked.questions(work) if request.get("asks") else None
    made = letter(found, work, questions, may, address)
    return {
        "text": blocks.text(made),
        "html": blocks.html(made),
        "word": work.word,
        "level": work.level,
        "name": found.site.name,
        "example": found.example,
        "system": work.system,
        "fragment": fragment,
        "address": address,
        "groups": may_change.choices(found.site),
        "may": may.split(".") if may else [],
        "courtesy": may_change.COURTESY,
        "said": list(found.said),
    }


def _page(work: Work, flat: bool) -> str:
    """The page that the customer's link opens: the whole supply where it could be worked out."""
    first = work.part("keep_up") or next(iter(work.parts), None)
    page = first.sheet.page if first else find_sheet("keep_up").page
    return page.rstrip("/") + ".html" if flat else page


def _mail(request: Data) -> Data:
    """The links of a pasted mail: {"found": [{"fragment", "page", "name", "both" …}], "said"}.

    both: opens the letter's own site beside that of the link; "" where they say the same, or where
    the letter is of our example.
    """
    sent = opened(request.get("fragment", ""), request.get("system", ""))
    found = mail_links.find(request["mail"])
    said, listed = mail_links.told(found), []
    for one in found:
        if not one.whole:
            continue
        try:
            site = opened(one.fragment, "", one.page)
        except InputError as error:
            said.append(f"“{one.shown}”: {error.message}")
            continue
        fragment = link.of_site(site.system, pack(site.site), "", site.may)
        other = not sent.example and pack(sent.site) != pack(site.site)
        listed.append({
            "fragment": fragment, "raw": one.fragment, "page": one.page, "shown": one.shown,
            "name": site.site.name, "said": list(site.said),
            "both": pairs.write(sent.system, sent.site, site.site) if other else "",
        })  # fmt: skip
    return {"found": listed, "said": said}
