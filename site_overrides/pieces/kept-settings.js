// What this device keeps, in words, till when, and a way to let it go. Without script nothing is kept.
(() => {
  const { settings } = (window.danceUnitBank ||= {});
  const APART = " Opened from a folder, each page may keep it by itself: forget it on each that you used.";
  const lessons = (count) => (count === 1 ? "1 lesson" : `${count} lessons`);

  for (const root of document.querySelectorAll('[data-part="kept"]:not([data-started])')) {
    try { start(root); root.dataset.started = ""; } catch (error) { console.error("kept:", error); }
  }

  function start(root) {
    const [list, until, way] = ["ul", "p", "p"].map((tag) => root.appendChild(document.createElement(tag)));
    const [forget, said] = ["button", "span"].map((tag) => document.createElement(tag));
    forget.type = "button";
    forget.textContent = "Forget all of it";
    said.setAttribute("role", "status");
    way.append(forget, " ", said);
    forget.addEventListener("click", () => { settings.forget(); said.textContent = "Forgotten."; });
    // what a card or a wall keeps meanwhile tells nobody, so it is asked for when somebody looks
    root.addEventListener("toggle", show);
    settings.onChange(show);
    show();
    root.hidden = false;

    function show() {
      const lines = inWords(settings.everything());
      list.replaceChildren(...(lines.length ? lines : ["Nothing so far."]).map((words) => {
        const item = document.createElement("li");
        item.textContent = words;
        return item;
      }));
      forget.disabled = !lines.length;
      said.textContent = "";
      const stays = `It stays in this browser, is sent nowhere, and goes after 31 August ${settings.keptUntil()}, when the school year ends.`;
      until.textContent = settings.keepsNothing ? settings.trouble : stays + (window.location.protocol === "file:" ? APART : "");
    }
  }

  function inWords({ fit, seen, kept }) {
    const count = (start) => Object.keys(kept).filter((name) => name.startsWith(start)).length;
    const [cards, walls, marked] = [count("card/"), count("wall/"), Object.keys(seen).length];
    return [
      fit && `The time, class and space you fit lessons to: ${fit.available} minutes, ${fit.changing} of them changing, and ${fit.dancing} dancing.`,
      marked && `Seen or not yet, as you marked it for ${lessons(marked)}.`,
      cards && `Where you are today on the card of ${lessons(cards)}, with its times.`,
      walls && `Where you are today on the wall of ${lessons(walls)}.`,
    ].filter(Boolean);
  }
})();
