// The card for the hand is the lesson's own page at lesson-3.html#card: a script makes it of what stands there, so that no
// other page says it again. Here the page is asked which of the two it is, before anything else begins on it.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const start = document.currentScript.src;
  const asked = () => /^#card(?=&|$)/.test(window.location.hash);
  const here = asked();

  window.addEventListener("hashchange", () => { if (asked() !== here) window.location.reload(); });
  if (here) become(document.querySelector("article[data-lesson]"));

  // all else that the page loads finds no lesson to begin on
  function become(lesson) {
    const root = document.createElement("div");
    Object.assign(root, { id: lesson.id, className: "card-root" });
    Object.assign(root.dataset, lesson.dataset, { part: "card" });
    bank.lessonOfCard = lesson;
    lesson.replaceWith(root);
    const style = document.createElement("link");
    Object.assign(style, { rel: "stylesheet", href: new URL("../css/card.css", start).href });
    const script = document.createElement("script");
    // where it cannot be had the lesson is there to read
    Object.assign(script, { src: new URL("card.js", start).href, onerror: () => root.replaceWith(lesson) });
    document.head.append(style, script);
  }
})();
