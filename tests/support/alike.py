"""Of what a page makes many times over in one way, the first few are left to be looked at."""

from __future__ import annotations

from playwright.sync_api import Page

MOST = 2
SHORTEN = r"""
(most) => {
  const TOLD = /^(class|style|role|type|lang|fill|stroke|aria-(?!label))/;
  const POINTERS = ["aria-labelledby", "aria-describedby", "aria-controls", "aria-owns", "for",
    "headers", "list"];
  const shapes = new Map();
  const shape = (one) => {
    if (!shapes.has(one)) {
      const given = [...one.attributes].map(({ name, value }) =>
        TOLD.test(name) ? `${name}=${value}` : name + (value.trim() ? "" : "!"));
      const own = [one.localName, ...given.sort(), one.textContent.trim() ? "" : "!"];
      shapes.set(one, `${own.join(" ")}(${[...one.children].map(shape).join(",")})`);
    }
    return shapes.get(one);
  };
  const pointing = new Map();
  for (const name of POINTERS) {
    for (const one of document.querySelectorAll(`[${name}]`)) {
      for (const id of one.getAttribute(name).split(/\s+/)) {
        pointing.set(id, [...(pointing.get(id) ?? []), one]);
      }
    }
  }
  const isPointedTo = (one) => [one, ...one.querySelectorAll("[id]")].some((inner) =>
    (pointing.get(inner.id) ?? []).some((from) => !one.contains(from)));
  for (const parent of document.querySelectorAll("body *")) {
    if (!parent.isConnected || parent.children.length <= most) continue;
    const seen = new Map();
    for (const child of [...parent.children]) {
      const like = shape(child);
      seen.set(like, (seen.get(like) ?? 0) + 1);
      if (seen.get(like) > most && !isPointedTo(child)) child.remove();
    }
  }
}
"""


def shorten(page: Page) -> None:
    """Take out of the open page the children of one parent that are alike, but the first few.

    Two are alike that have the same elements in the same order, with the same classes, styles,
    roles and states, and the same attributes beside, text where the other has text and nothing
    where it has nothing. What another element names as its label or description stays.
    """
    page.evaluate(SHORTEN, MOST)
