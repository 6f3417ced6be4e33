// Which lesson of the unit is on the wall, as the address says it: the first where it names none. The others go before
// anything begins on them; without script styles hide them.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const every = [...document.querySelectorAll('[data-part="wall"]')];
  const asked = () => every.find((one) => one.id === /^#(lesson-\d+)(?=&|$)/.exec(window.location.hash)?.[1]);
  const here = asked() ?? every[0];
  const others = every.filter((one) => one !== here);

  window.addEventListener("hashchange", () => { if (asked() && asked() !== here) window.location.reload(); });
  for (const other of others) other.remove();
  // what is drawn in another lesson, and shown here again, stands here from now on
  for (const use of here.querySelectorAll("use")) {
    const shapes = others.map((other) => other.querySelector(use.getAttribute("href"))).find(Boolean);
    if (shapes) use.replaceWith(shapes);
  }
  const { lesson: number, title: lesson } = here.dataset;
  const heading = document.querySelector("h1"), named = here.querySelector(".of-lesson");
  const unit = heading.textContent, all = gettext("On the wall: {title}", { title: unit });
  document.title = document.title.replace(all, gettext("Wall for lesson {number}: {lesson}, {unit}", { number, lesson, unit }));
  heading.textContent = gettext("On the wall: {title}", { title: lesson });
  named.classList.add("aside");
  document.querySelector(".wall-foot").prepend(here.querySelector(".ways"));
})();
