// Seen or not yet: two buttons under looking and talking, and the start they point to next time.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const WORDS = { seen: gettext("Seen"), "not-yet": gettext("Not yet") };
  const KEPT = gettext("Kept on this device only; the next lesson opens there.");
  const FORGOTTEN = gettext("Kept until you close this page, because this browser keeps nothing.");

  for (const [part, start] of [["seen", ask], ["last-time", point]]) {
    for (const root of document.querySelectorAll(`[data-part="${part}"]:not([data-started])`)) {
      try { start(root); root.dataset.started = ""; } catch (error) { console.error("seen:", error); }
    }
  }

  function ask(root) {
    const { unit, lesson } = root.closest("[data-lesson]").dataset;
    const lines = root.closest("section");
    const group = document.createElement("div");
    const said = document.createElement("p");
    const buttons = Object.entries(WORDS).map(([value, words]) => {
      const button = document.createElement("button");
      button.type = "button";
      button.value = value;
      button.textContent = words;
      // pressed again, it is taken back
      button.addEventListener("click", () => {
        bank.settings.keepSeen(unit, lesson, bank.settings.seen(unit, lesson) === value ? null : value);
      });
      return button;
    });
    group.className = "pair";
    group.setAttribute("role", "group");
    group.setAttribute("aria-label", gettext("Did you see it?"));
    group.append(`${gettext("Did you see it?")} `, ...buttons);
    said.className = "quiet";
    said.setAttribute("role", "status");
    root.append(group, said);
    keepShowing(() => {
      const value = bank.settings.seen(unit, lesson);
      for (const button of buttons) button.setAttribute("aria-pressed", String(button.value === value));
      mark(lines, value);
      const words = value ? (bank.settings.trouble ? FORGOTTEN : KEPT) : "";
      if (said.textContent !== words) said.textContent = words;
    });
  }

  function point(root) {
    const { unit } = root.closest("[data-lesson]").dataset;
    keepShowing(() => mark(root, bank.settings.seen(unit, root.dataset.last)));
  }

  function keepShowing(show) {
    bank.settings.onChange(show);
    show();
  }

  function mark(root, value) {
    for (const line of root.querySelectorAll("[data-value]")) {
      if (line.dataset.value === value) line.setAttribute("aria-current", "true");
      else line.removeAttribute("aria-current");
    }
  }
})();
