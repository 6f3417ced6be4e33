// What a card says, taken out of the lesson on whose page it is: nothing on it is said anew but the names of its folds.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const INTO = gettext("Groups: say"), LOOK = gettext("Look"), TALK = gettext("Talk"), NEXT = gettext("Next"), ASK = gettext("Ask"), ANSWERS = gettext("Answers");
  const FLOOR = gettext("The floor"), MOVES = gettext("The moves"), AGAIN = gettext("The moves danced again");
  const RUN = gettext("How to run it"), GROUPS = gettext("Groups"), RANGE = gettext("Easier, harder"), SEATS = gettext("Sitting, on wheels");
  const END = gettext("The end of the lesson"), CAN_WAIT = gettext("This can wait if time is short.");
  const ROOM = gettext("The room"), BEFORE = gettext("Before they move"), START = gettext("Where to start"), NOTES = gettext("Notes for you");
  const IF = gettext("If …"), NOT_DANCING = gettext("One can’t dance today"), CHANGE = gettext("To fit your class");
  const STEPS = gettext("All steps"), AFRESH = gettext("Start this lesson afresh"), WALL = gettext("On the wall");

  for (const root of document.querySelectorAll('[data-part="card"]:not([data-started])')) {
    try {
      made(root, bank.lessonOfCard);
    } catch (error) {
      console.error("card:", error);
      window.location.replace(window.location.href.split("#")[0]);
    }
  }

  function made(root, lesson) {
    const page = window.location.pathname.split("/").pop();
    const back = gettext("Lesson {number}: {title}", { number: root.dataset.lesson, title: words(lesson, "h1") });
    const ways = [carried(`wall.html#lesson-${root.dataset.lesson}`, WALL), carried(page, back)];
    root.append(
      make("header.top", make("p.way", carried(page, back))),
      set(make("h1", words(lesson, "h1")), { title: "" }),
      make("p.print-only", gettext("The card’s steps in short. The lesson’s own page prints all of it: {lesson}.", { lesson: back })),
      begin(lesson),
      ...all(lesson, ".sprite"),
      make("div.cards", ...steps(lesson)),
      finished(lesson),
      set(make("p.aside"), { told: "" }, { role: "status" }),
      set(make("p.trouble-said.quiet"), { said: "" }),
      trouble(lesson),
      set(make("details.panel.steps-panel", make("summary", STEPS), set(make("ol"), { list: "" }),
        make("p", set(make("button", AFRESH), { afresh: "" }, { type: "button" })),
        make("ul.ways", ...ways.map((way) => make("li", way))), taken(lesson, ".kept")), { steps: "" }, { hidden: "" }),
    );
    drawnHere(root, lesson);
    const named = { number: root.dataset.lesson, lesson: words(lesson, "h1"), unit: words(lesson, ".place a") };
    document.title = `${gettext("Card for lesson {number}: {lesson}, {unit}", named)} – ${words(document, ".bank")}`;
    document.body.className = "hall card";
    for (const name of ["paper", "foot"]) delete document.documentElement.dataset[name];
    for (const around of document.querySelectorAll("body > [data-beside]")) around.remove();
    bank.settings.carry();
  }

  function begin(lesson) {
    const last = lesson.querySelector(".last-time");
    const notes = lesson.querySelector("section.notes");
    notes?.querySelector("h2").remove();
    return set(make("section.begin",
      make("p", words(lesson, ".lead")),
      set(make("p"), { plan: "" }),
      make("p", make("span.label", ROOM), " ", words(lesson, ".part-room p")),
      set(make("p"), { teams: "" }, { hidden: "" }),
      make("h2", BEFORE),
      ...checks(lesson),
      ...(last ? [make("h2", START), taken(lesson, ".part-story .looked-for"), last] : []),
      ...(notes ? [make("details.notes", make("summary", NOTES), ...notes.childNodes)] : []),
    ), { begin: "" });
  }

  function checks(lesson) {
    const list = lesson.querySelector(".part-before ul").cloneNode(true);
    list.className = "checks";
    return [list, make("p.quiet", lesson.querySelector(".deference").firstChild.textContent.trim())];
  }

  function steps(lesson) {
    const every = [...lesson.querySelectorAll(".step")];
    const names = every.map((one) => words(one, "h3", ".number"));
    const closing = every.filter((one) => one.dataset.phase === "look and talk").at(-1);
    return every.map((one, n) => step(one, names[n], names[n + 1] ?? END, one === closing ? lesson.querySelector("section.talk") : null));
  }

  function step(one, name, after, talk) {
    const { told: _told, written: _written, ...facts } = one.dataset;
    const into = words(one, ".into");
    const where = [[{ place: "" }, gettext("Step {number}", { number: facts.step })], [{ lasts: "" }, words(one, ".minutes").replace(" ", "\u00a0")], [{ groups: "" }, words(one, ".grouping")]];
    const said = make("div.spoken",
      make("p.where", ...where.flatMap(([data, text], n) => [n ? " · " : "", set(make("span", text), data)])),
      set(make("h2", name), {}, { id: `at-card-${facts.step}`, tabindex: "-1" }),
      ...(into ? [labelled("p.into", INTO, set(make("span", into.slice(into.indexOf("“"))), { into: "" }))] : []),
      ...all(one, ".say, .task"),
      ...all(one, ".you").map((line) => named(line, "task you")),
      ...(talk ? [labelled("p.task", "shows" in facts ? LOOK : TALK, words(talk, "p"))] : []),
      taken(one, ".look-for") ?? (talk && taken(talk, ".look-for")),
      ...beats(one).map((line) => named(line, "beat")),
      ...all(one, ".line").map((line) => named(line, "task")),
      ...("canWait" in facts ? [make("p.quiet.can-wait", CAN_WAIT)] : []),
      labelled("p.after", NEXT, set(make("span", after), { after: "" })));
    return set(make("section.step-card", said, folds(one, name, talk)), facts, { "aria-labelledby": `at-card-${facts.step}` });
  }

  function folds(one, name, talk) {
    const fold = (title, kind, inside, wide) =>
      inside.length ? [set(make(`details${kind}`, summary(title, `, ${one.dataset.step}`), ...inside), wide ? { wideOpen: "" } : {})] : [];
    const asked = talk ? all(talk, ".ask") : all(one, ".ask").slice(0, 1);
    const meant = (from) => all(one, from).map((list) => named(list, "meant"));
    return make("div.folds",
      ...fold(FLOOR, ".floor-here", [...one.querySelectorAll(".step-plan figure")].flatMap(plan), true),
      ...asked.map((question, n) => asking(question, name, n + 1)),
      ...fold(MOVES, ".moves", [...[...one.querySelectorAll(".step-strip figure")].flatMap(strip), ...meant(".shown > .told-1"),
        ...all(one, ".shown > .quiet").map((line) => named(line, "")), ...meant(".shown > .told-3")], true),
      ...fold(AGAIN, ".moves", meant(".again dl")),
      ...fold(RUN, "", [...all(one, ".run").map(running), ...all(one, ".helps > *")], true),
      ...fold(GROUPS, "", all(one, "p.told-2").map((line) => named(line, ""))),
      ...fold(RANGE, "", all(one, ".range > p")),
      ...fold(SEATS, ".seats", all(one, ".seats > :not(summary)")));
  }

  function strip(figure) { return [make("p.strip-name", words(figure, "figcaption")), taken(figure, "svg")]; }

  function plan(figure) { return [...strip(figure), make("p.quiet", words(figure, "li"))]; }

  function asking(asked, name, number) {
    const question = words(asked, "strong"), looksBack = words(asked, ".quiet"), answers = words(asked, ".answers");
    const beside = gettext("{does}, question {number}", { does: name, number });
    return make("details.question", summary(ASK, `: ${beside}`), make("p", strong(question)),
      ...(looksBack ? [make("p.quiet", looksBack)] : []),
      ...(answers ? [make("details.answers-in", summary(ANSWERS, ` ${gettext("to: {question}", { question })}`), make("p", answers))] : []));
  }

  function finished(lesson) {
    const starts = lesson.querySelector(".talk .rows");
    const line = (data) => set(make("p"), data, { hidden: "" });
    return set(make("section.finished",
      set(make("h2", starts ? words(lesson, ".talk h3") : END), {}, { id: "at-finished", tabindex: "-1" }),
      line({ ended: "" }), line({ untaught: "" }), starts, starts && set(make("div"), { part: "seen" }),
    ), { finished: "" }, { "aria-labelledby": "at-finished" });
  }

  function trouble(lesson) {
    const rows = (from) => named(taken(lesson, from), "stacked");
    const change = lesson.querySelector("#at-change ~ dl");
    const alone = make("div", make("dt", NOT_DANCING), make("dd", words(lesson, ".part-not-dancing p")));
    return set(make("details.panel", make("summary", IF), rows(".part-trouble dl"), make("dl.stacked", alone),
      make("h3", BEFORE), ...checks(lesson),
      ...(change ? [make("h3", CHANGE), rows("#at-change ~ dl")] : [])), { trouble: "" });
  }

  // a drawing that shows again what the lesson draws elsewhere takes the shapes with it
  function drawnHere(root, lesson) {
    for (const use of root.querySelectorAll("use")) {
      const shapes = lesson.querySelector(use.getAttribute("href"));
      if (shapes) use.replaceWith(shapes);
    }
  }

  function words(from, what, without) {
    const found = from.querySelector(what)?.cloneNode(true);
    if (without) found.querySelector(without).remove();
    return found?.textContent.trim() ?? "";
  }

  // what a step sounds, whole: the lines of the page, for which its fold has others under the same label, or more
  function beats(one) {
    const label = (line) => line.querySelector("b").textContent;
    const full = all(one, ".beats > p"), lines = all(one, ".does > .counts");
    const more = full.filter((other) => !lines.some((line) => label(line) === label(other)));
    return [...lines.map((line) => full.find((other) => label(other) === label(line)) ?? line), ...more];
  }

  function all(from, what) { return [...from.querySelectorAll(what)]; }

  function taken(from, what) {
    const found = from.querySelector(what);
    found?.remove();
    return found;
  }

  // what it is about is told by the fold, but for what is chosen and which words are said
  function running(line) {
    const label = line.querySelector("b");
    if (label.textContent === RUN) label.remove();
    return named(line, "");
  }

  function named(element, kind) {
    element.className = kind;
    return element;
  }

  function strong(text) { return make("strong", text); }

  function summary(title, beside) { return make("summary", title, make("span.aside", beside)); }

  function labelled(kind, label, ...inside) { return make(kind, make("b", label), " ", ...inside); }

  function carried(href, text) { return set(make("a", text), { carry: "" }, { href }); }

  function set(element, data, attributes = {}) {
    Object.assign(element.dataset, data);
    for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
    return element;
  }

  // make("p.quiet", "said", element): what is null is left out
  function make(name, ...inside) {
    const [tag, ...kinds] = name.split(".");
    const element = document.createElement(tag);
    if (kinds.length) element.className = kinds.join(" ");
    element.append(...inside.filter((one) => one !== null && one !== ""));
    return element;
  }
})();
