"""What must still hold of a reply when its sheet has changed since 0.1.0."""

from calc.bridge import handle
from tests.release_0_1_0.facts import LEVELS, seen


def reply(request_text):
    """What today's code shows for a request; an exception is kept as its words."""
    try:
        return seen(handle(request_text))
    except Exception as error:  # whatever it is, the reader would get no reply
        return {"failed": f"{type(error).__name__}: {error}"}


def broken(stored, now, mended=False, better=False):
    """Why a reply may not be so, whatever was changed; "" where it may.

    stored: a line of ``replies/``; now: of ``reply``; mended: an error may be an answer now;
    better: the verdict may be better now.
    """
    if "failed" in now:
        return f"no reply: {now['failed']}"
    if not now["errors"] and now["level"] not in LEVELS:
        return "neither errors nor a verdict"
    if "errors" in stored:
        stays = now["errors"] or mended
        return "" if stays else f"was refused at {stored['errors']}, is answered now"
    if now["errors"] or better:
        return ""
    if LEVELS.index(now["level"]) > LEVELS.index(stored["level"]):
        return f"was {stored['level']}, is {now['level']} now"
    return ""
