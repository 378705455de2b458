"""The part of an address after "#": keys and texts, spelled and unspelled, and check characters.

No field is known here.  What mail programs do to an address is undone where it can be told:
"&amp;" for "&", letters of keys as "%6c", the whole spelled once more.
"""

from __future__ import annotations

import re
from binascii import crc32
from urllib.parse import quote, unquote_to_bytes

LONGEST = 100_000  # characters of a fragment that is read; a full table of rows takes 20,000
CHECK = 5  # check characters: one changed link in 33 million passes
_SIGNS = "0123456789abcdefghjkmnpqrstvwxyz"  # none that is taken for another
_LIKE = str.maketrans("oil", "011")
_AND = re.compile(r"&(?:amp|#38|#x26)(?:;|%3B)", re.IGNORECASE)
_BAD = re.compile(r"%(?![0-9a-f]{2})", re.IGNORECASE)
_SAFE = "/.,-:;!?~*"


def join(pairs: list[tuple[str, str]]) -> str:
    """(key, text) pairs as a fragment: "u=us&climb=50ft"; a space is "+".

    >>> join([("u", "us"), ("pipe", "1 1/4 in")])
    'u=us&pipe=1+1/4+in'
    """
    return "&".join(f"{key}={quote(text, safe=_SAFE).replace('%20', '+')}" for key, text in pairs)


def part(fragment: str) -> tuple[list[tuple[str, str]], list[tuple[str, str]]]:
    """((key, text) pairs, (key, what stands there) of what cannot be unspelled) of a fragment.

    >>> part("#u=us&amp;climb=50+ft&stray")
    ([('u', 'us'), ('climb', '50 ft')], [('', 'stray')])
    """
    fragment = re.sub(r"^(?:#|%23)+", "", fragment)
    if "=" not in fragment and "%3d" in fragment.lower():
        fragment = _unspelled(fragment) or fragment
    pairs, damaged = [], []
    for piece in _AND.sub("&", fragment).split("&"):
        key, sign, text = piece.partition("=")
        known = _unspelled(key.replace("+", " "))
        read = _unspelled(text.replace("+", " "))
        if not sign or not key or known is None or read is None:
            if piece:
                damaged.append((known or "" if sign else "", piece[:40]))
            continue
        pairs.append((known.strip(), read))
    return pairs, damaged


def added(fragment: str, key: str, text: str) -> str:
    """A whole fragment with one more pair before its check characters, which are made anew.

    >>> held = [("v", "1"), ("site", "x")]
    >>> added(join([*held, ("c", check(held))]), "a", "b")
    'v=1&site=x&a=b&c=28v0f'
    """
    pairs = [*part(fragment)[0][:-1], (key, text)]
    return join([*pairs, ("c", check(pairs))])


def again(fragment: str) -> str | None:
    """A fragment spelled twice, spelled once; None where it is not."""
    return _unspelled(fragment) if "%25" in fragment else None


def _unspelled(text: str) -> str | None:
    if "%" not in text:
        return text
    if _BAD.search(text):
        return None
    try:
        return unquote_to_bytes(text).decode("utf-8")
    except UnicodeDecodeError:
        return None


def check(pairs: list[tuple[str, str]]) -> str:
    """The check characters of (key, text) pairs; case and runs of spaces do not count.

    >>> check([("climb", "50ft")]) == check([("CLIMB", "50FT ")]) != check([("climb", "5ft")])
    True
    """
    plain = "\n".join(f"{key}={' '.join(text.split())}".casefold() for key, text in pairs)
    number = crc32(plain.encode("utf-8", "surrogatepass"))
    return "".join(_SIGNS[number >> 5 * place & 31] for place in range(CHECK))


def same_check(text: str, pairs: list[tuple[str, str]]) -> bool:
    """Whether ``text`` begins with the check characters of ``pairs``, a full stop may follow."""
    found = re.match(rf"[0-9a-z]{{{CHECK}}}(?![0-9a-z])", text.strip().lower())
    return found is not None and found[0].translate(_LIKE) == check(pairs)


def shown(text: str) -> str:
    """A text from a link as it may be named in a sentence: short, and nothing that hides."""
    plain = "".join(sign if sign.isprintable() else " " for sign in text[:41])
    return plain if len(text) <= 40 else f"{plain[:40]}…"


def named(names: list[str]) -> str:
    """At most three names: "a, b, c and 4 more"."""
    rest = len(names) - 3
    return ", ".join(names[:3]) + (f" and {rest} more" if rest > 0 else "")
