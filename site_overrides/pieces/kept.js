// What this device keeps, in words, till when, and a way to let it go. Without script nothing is kept.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const NOTHING = "Nothing so far.";
  const REFUSED = "This browser keeps nothing for the page; what you set goes when you close it.";
  const lessons = (count) => (count === 1 ? "1 lesson" : `${count} lessons`);

  for (const root of document.querySelectorAll('[data-part="kept"]:not([data-started])')) {
    try { start(root); root.dataset.started = ""; } catch (error) { console.error("kept:", error); }
  }

  function start(root) {
    const { settings } = bank;
    const [list, until, apart, way, said] = ["list", "until", "apart", "way", "said"]
      .map((name) => root.querySelector(`[data-kept-${name}]`));
    const forget = document.createElement("button");
    forget.type = "button";
    forget.textContent = "Forget all of it";
    way.prepend(forget, " ");
    apart.hidden = window.location.protocol !== "file:";
    forget.addEventListener("click", () => {
      settings.forget();
      said.textContent = "Forgotten.";
    });
    // what a card or a wall keeps meanwhile tells nobody, so it is asked for when somebody looks
    root.addEventListener("toggle", () => {
      said.textContent = "";
      show();
    });
    settings.onChange(() => {
      said.textContent = "";
      show();
    });
    show();
    root.hidden = false;

    function show() {
      const lines = inWords(settings.everything());
      list.replaceChildren(...(lines.length ? lines : [NOTHING]).map((words) => {
        const item = document.createElement("li");
        item.textContent = words;
        return item;
      }));
      forget.disabled = !lines.length;
      until.textContent = settings.keepsNothing ? REFUSED
        : `It stays in this browser, is sent nowhere, and goes after 31 August ${settings.keptUntil()}, when the school year ends.`;
    }
  }

  function inWords({ fit, seen, kept }) {
    const names = Object.keys(kept);
    const count = (start) => names.filter((name) => name.startsWith(start)).length;
    const [cards, walls] = [count("card/"), count("wall/")];
    const seenIn = Object.keys(seen).length;
    return [
      fit && `The time, class and space you fit lessons to: ${fit.available} minutes, ${fit.changing} of them changing, and ${fit.dancing} dancing.`,
      seenIn && `Seen or not yet, as you marked it for ${lessons(seenIn)}.`,
      cards && `Where you are today on the card of ${lessons(cards)}, with its times.`,
      walls && `Where you are today on the wall of ${lessons(walls)}.`,
    ].filter(Boolean);
  }
})();
