"""The search finds the words people use: the right page is among the first two."""

import re

from tests.browser.queries import QUERIES

# types the words, and resolves with the pages of the first results once the list is quiet
ASK = """async (words) => {
  const box = document.querySelector(".md-search__input");
  const list = document.querySelector(".md-search-result__list");
  const settled = new Promise((resolve) => {
    let timer = setTimeout(resolve, 4000);
    const watch = new MutationObserver(() => {
      clearTimeout(timer);
      timer = setTimeout(() => { watch.disconnect(); resolve(); }, 80);
    });
    watch.observe(list, { childList: true });
  });
  box.value = words;
  box.dispatchEvent(new Event("keyup", { bubbles: true }));
  await settled;
  const items = [...list.querySelectorAll(".md-search-result__item")];
  return items.map((one) => one.querySelector("a").href);
}"""


def _page(address, href):
    return re.sub(r"[?#].*", "", href.removeprefix(address)).strip("/")


def test_the_right_page_is_among_the_first_two(page, address):
    page.goto(address)
    page.get_by_role("button", name="Search").click()
    page.locator(".md-search__input").press_sequentially("pump", delay=30)
    page.wait_for_selector(".md-search-result__item a")
    missed = []
    for words, wanted in QUERIES:
        found = [_page(address, href) for href in page.evaluate(ASK, words)]
        if not wanted & {*found[:2]}:
            missed.append((words, found[:3]))
    assert missed == []
