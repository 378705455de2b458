"""Every way of saying a fact, and every trap, of all files of phrasings."""

from tests.enquiries import (
    phrasings,
    phrasings_brief,
    phrasings_counted,
    phrasings_false,
    phrasings_machines,
    phrasings_recount,
    phrasings_ways,
    phrasings_wrong,
)

FILES = (
    phrasings,
    phrasings_brief,
    phrasings_counted,
    phrasings_false,
    phrasings_machines,
    phrasings_recount,
    phrasings_ways,
    phrasings_wrong,
)
SAID = tuple(one for file in FILES for one in file.SAID)
NOT_SAID = tuple(one for file in FILES for one in file.NOT_SAID)
