// What this device keeps, in words, till when, and a way to let it go. Without script nothing is kept.
(() => {
  const { gettext, ngettext, settings } = (window.danceUnitBank ||= {});
  const APART = gettext("Opened from a folder, each page may keep it by itself: forget it on each that you used.");

  for (const root of document.querySelectorAll('[data-part="kept"]:not([data-started])')) {
    try { start(root); root.dataset.started = ""; } catch (error) { console.error("kept:", error); }
  }

  function start(root) {
    const [list, until, way] = ["ul", "p", "p"].map((tag) => root.appendChild(document.createElement(tag)));
    const [forget, said] = ["button", "span"].map((tag) => document.createElement(tag));
    forget.type = "button";
    forget.textContent = gettext("Forget all of it");
    said.setAttribute("role", "status");
    way.append(forget, " ", said);
    forget.addEventListener("click", () => { settings.forget(); said.textContent = gettext("Forgotten."); });
    // what a card or a wall keeps meanwhile tells nobody, so it is asked for when somebody looks
    root.addEventListener("toggle", show);
    settings.onChange(show);
    show();
    root.hidden = false;

    function show() {
      const lines = inWords(settings.everything());
      list.replaceChildren(...(lines.length ? lines : [gettext("Nothing so far.")]).map((words) => {
        const item = document.createElement("li");
        item.textContent = words;
        return item;
      }));
      forget.disabled = !lines.length;
      said.textContent = "";
      const stays = gettext(
        "It stays in this browser, is sent nowhere, and goes after 31 August {year}, when the school year ends.",
        { year: settings.keptUntil() },
      );
      const apart = window.location.protocol === "file:" ? ` ${APART}` : "";
      until.textContent = settings.keepsNothing ? settings.trouble : `${stays}${apart}`;
    }
  }

  function inWords({ fit, seen, kept }) {
    const count = (start) => Object.keys(kept).filter((name) => name.startsWith(start)).length;
    const [cards, walls, marked] = [count("card/"), count("wall/"), Object.keys(seen).length];
    return [
      fit && gettext(
        "The time, class and space you fit lessons to: {available} minutes, {changing} of them changing, and {dancing} dancing.",
        fit,
      ),
      marked && ngettext(
        "Seen or not yet, as you marked it for {number} lesson.",
        "Seen or not yet, as you marked it for {number} lessons.",
        marked,
      ),
      cards && ngettext(
        "Where you are today on the card of {number} lesson, with its times.",
        "Where you are today on the card of {number} lessons, with its times.",
        cards,
      ),
      walls && ngettext(
        "Where you are today on the wall of {number} lesson.",
        "Where you are today on the wall of {number} lessons.",
        walls,
      ),
    ].filter(Boolean);
  }
})();
