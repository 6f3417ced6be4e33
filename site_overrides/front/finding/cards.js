// A found unit as the page shows it, the same as site_overrides/pieces/unit_card.html.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const finding = (bank.finding ||= {});

  const CARD = [
    '<li class="unit-card">',
    '<h3><a data-card="title"></a></h3>',
    '<img data-card="picture" alt="" width="800" height="500">',
    '<p class="facts"><strong data-card="years"></strong></p>',
    '<p class="facts why" data-card="why"></p>',
    '<p data-card="summary"></p>',
    '<div data-card="strip"></div>',
    '<p class="facts quiet" data-card="topics"></p>',
    '<p class="facts quiet" data-card="from"></p>',
    '<ul class="jump"><li class="quiet" aria-hidden="true">Lesson</li>',
    '<li data-card="lesson"><a><span class="aside">Lesson </span><span data-number></span></a></li></ul>',
    '</li>',
  ].join("");

  // `unit` is what its card.js says; `lines` are why it is shown, `room` what it asks of the room that was chosen, which
  // nobody has compared with the teacher's own; and `fit` is carried to its lessons.
  finding.cardOf = (unit, lines, room, fit) => {
    const card = parsed(CARD, ".unit-card");
    const part = (name) => card.querySelector(`[data-card="${name}"]`);
    const at = (page) => `${unit.at}${page}${fit ? `#fit=${fit}` : ""}`;
    part("title").textContent = unit.title;
    part("title").href = at("index.html");
    for (const name of ["years", "summary", "topics"]) part(name).textContent = unit[name];
    part("from").textContent = unit.from;
    if (unit.picture) {
      Object.assign(part("picture"), { src: unit.at + unit.picture, alt: unit.shows });
    } else {
      part("picture").remove();
    }
    part("strip").replaceWith(parsed(unit.strip, "svg"));
    // a unit in another language than the page's says so, and the words of the page inside its card do
    if (unit.language) card.lang = unit.language;
    const why = part("why");
    if (unit.language) why.lang = document.documentElement.lang;
    for (const words of room ? [...lines, room] : lines) {
      const line = why.cloneNode();
      line.textContent = words;
      line.classList.toggle("why", words !== room);
      why.before(line);
    }
    why.remove();
    const jump = part("lesson");
    if (unit.lesson) card.querySelector(".jump > li").textContent = unit.lesson;
    if (unit.lesson) jump.querySelector(".aside").textContent = `${unit.lesson} `;
    for (let lesson = 1; lesson <= unit.lessons; lesson += 1) {
      const item = jump.cloneNode(true);
      item.querySelector("a").href = at(`lesson-${lesson}.html`);
      item.querySelector("[data-number]").textContent = lesson;
      jump.before(item);
    }
    jump.remove();
    return card;
  };

  function parsed(html, what) {
    return document.importNode(new DOMParser().parseFromString(html, "text/html").querySelector(what), true);
  }
})();
