// Only in the preview: a form that asks for a field by what its schema says, in plain words, and
// gives back plain data. A page loads this before the preview's other scripts.
(() => {
  const preview = (window.danceUnitPreview = {});
  let forms = 0;

  preview.made = (tag, options, ...inside) => {
    const element = Object.assign(document.createElement(tag), options);
    element.append(...inside);
    return element;
  };
  preview.plain = (text) => text.replace(/\s+/g, " ").trim();
  const { made, plain } = preview;

  // What is typed in a window is not dropped at the first Escape: it is said once, and the second
  // time it goes.
  const LOSES = "What you typed is not in the file. Do that once more to leave it, or go on typing.";
  preview.guarded = (dialog, told) => {
    let typed = false;
    let asked = false;
    const mayLeave = () => {
      if (!typed || asked) return true;
      asked = true;
      told.textContent = LOSES;
      return false;
    };
    dialog.addEventListener("input", () => {
      typed = true;
      asked = false;
    });
    dialog.addEventListener("keydown", (event) => {
      if (event.key === "Escape" && !mayLeave()) event.preventDefault();
    });
    dialog.addEventListener("cancel", (event) => {
      if (!mayLeave()) event.preventDefault();
    });
    dialog.addEventListener("close", () => (typed = asked = false));
    return { mayLeave, anew: () => (typed = asked = false) };
  };

  const said = (word) => ({ true: "yes", false: "no" })[word] || String(word);
  const first = (about) => about.replace(/(\. ).*$/s, ".");

  // A control with its label and what the schema says of it.
  function labelled(asked, control, hint) {
    const id = `preview-asked-${(forms += 1)}`;
    control.id = id;
    const words = [asked.about, hint].filter(Boolean).join(" ");
    const about = made("small", { id: `${id}-about`, textContent: words });
    if (words) control.setAttribute("aria-describedby", about.id);
    const label = made("label", { htmlFor: id, textContent: asked.called });
    if (!asked.needed && !asked.alone) label.append(" ", made("small", { textContent: "(may stay empty)" }));
    return made("div", { className: "preview-asked" }, label, about, control);
  }

  const field = (element, value) => ({ element, value });

  function text(asked, now) {
    const area = made("textarea", { rows: asked.letters > 100 ? 3 : 1, required: asked.needed, value: now ?? "" });
    if (asked.letters) area.maxLength = Math.min(asked.letters, 600);
    return field(labelled(asked, area, asked.letters ? `At most ${asked.letters} letters.` : ""), () => plain(area.value));
  }

  function choice(asked, now) {
    const words = asked.words;
    const options = words.map((word) => made("option", { textContent: said(word) }));
    const select = made("select", { required: asked.needed }, made("option", { value: "", textContent: "choose…" }), ...options);
    select.selectedIndex = words.findIndex((word) => word === now) + 1;
    return field(labelled(asked, select), () => (select.selectedIndex > 0 ? words[select.selectedIndex - 1] : ""));
  }

  // A code of several parts may be a number as well: counts are 8, or 1/2.
  function code(asked, now) {
    if (asked.words.length) return choice(asked, now);
    const input = made("input", { type: "text", required: asked.needed, value: now ?? "", autocomplete: "off" });
    const hint = asked.like ? `Write ${asked.like}.` : "";
    return field(labelled(asked, input, hint), () => asNumber(plain(input.value), asked));
  }

  const asNumber = (typed, asked) => (/^\d{1,4}$/.test(typed) && /number|count/.test(`${asked.like} ${asked.about}`) ? Number(typed) : typed);

  function number(asked, now) {
    const input = made("input", { type: "number", step: "any", required: asked.needed, value: now ?? "" });
    if (asked.most) Object.assign(input, { min: asked.least, max: asked.most });
    const hint = asked.most ? `From ${asked.least} to ${asked.most}.` : "";
    return field(labelled(asked, input, hint), () => (input.value === "" ? "" : Number(input.value)));
  }

  const yesOrNo = (asked, now) => choice({ ...asked, words: [true, false] }, now ?? true);

  // Words of a list, ticked; those that the unit has besides stay.
  function ticked(asked, now) {
    const words = [...new Set([...asked.each.words, ...(now || [])])];
    const boxes = words.map((word) => made("input", { type: "checkbox", checked: (now || []).includes(word) }));
    const labels = words.map((word, n) => made("label", {}, boxes[n], ` ${said(word)}`));
    const order = [...(now || [])];
    const within = made("fieldset", { className: "preview-asked" }, made("legend", { textContent: asked.called }), made("small", { textContent: asked.about }), ...labels);
    boxes.forEach((box, n) =>
      box.addEventListener("change", () => {
        const at = order.indexOf(words[n]);
        if (box.checked && at < 0) order.push(words[n]);
        if (!box.checked && at >= 0) order.splice(at, 1);
      }),
    );
    return field(within, () => order);
  }

  function lines(asked, now) {
    const split = asked.each.takes === "text" && asked.each.letters > 100 ? "\n" : ",";
    const shown = (now || []).join(split === "," ? ", " : "\n");
    const area = made("textarea", { rows: split === "," ? 1 : 3, required: asked.needed, value: shown });
    const hint = split === "," ? "Put commas between them." : "Each on a line of its own.";
    const like = asked.each.like ? `Each is ${asked.each.like}.` : "";
    const numbers = asked.each.takes === "number";
    return field(labelled(asked, area, `${hint} ${like}`.trim()), () =>
      area.value.split(split).map(plain).filter(Boolean).map((one) => (numbers ? Number(one) : asNumber(one, asked.each))),
    );
  }

  // Parts with fields of their own, one below another.
  function parts(asked) {
    const held = [];
    const within = made("fieldset", { className: "preview-asked" }, made("legend", { textContent: asked.called }), made("small", { textContent: first(asked.about) }));
    const more = made("button", { type: "button", textContent: "One more" });
    const add = () => {
      const one = control({ ...asked.each, called: `${asked.each.called} ${held.length + 1}`, needed: true });
      held.push(one);
      more.before(one.element);
      more.hidden = asked.most > 0 && held.length >= asked.most;
    };
    more.addEventListener("click", add);
    within.append(more);
    for (let n = 0; n < Math.max(1, asked.least); n += 1) add();
    return field(within, () => held.map((one) => one.value()));
  }

  function fields(asked) {
    const within = made("fieldset", { className: "preview-asked" }, made("legend", { textContent: asked.called }), made("small", { textContent: first(asked.about) }));
    const ways = asked.inside.filter((one) => asked.oneOf.includes(one.name));
    const held = asked.inside.filter((one) => !ways.includes(one)).map((one) => [one.name, control(one)]);
    let way = null;
    if (ways.length) {
      const which = control({ called: "Which", about: "Exactly one of these.", takes: "word", words: ways.map((one) => one.called), needed: true });
      const place = made("div", {});
      within.append(which.element, place);
      which.element.addEventListener("change", () => {
        const one = ways.find((each) => each.called === which.value());
        way = one && [one.name, control({ ...one, needed: true })];
        place.replaceChildren(...(way ? [way[1].element] : []));
      });
    }
    within.append(...held.map(([, one]) => one.element));
    return field(within, () => {
      const pairs = [...(way ? [way] : []), ...held].map(([name, one]) => [name, one.value()]);
      return Object.fromEntries(pairs.filter(([, value]) => !isEmpty(value)));
    });
  }

  function named(asked) {
    const name = control({ called: "Its name", about: "", takes: "code", like: asked.like, words: [], needed: true });
    const one = control({ ...asked.each, needed: true });
    const within = made("fieldset", { className: "preview-asked" }, made("legend", { textContent: asked.called }), name.element, one.element);
    return { element: within, value: () => ({ [name.value()]: one.value() }), name: () => String(name.value()), inner: () => one.value() };
  }

  const isEmpty = (value) => value === "" || (typeof value === "object" && value !== null && !Object.keys(value).length);

  // The control that asks for `asked`, with what stands there `now`, if it stands there.
  function control(asked, now) {
    if (asked.takes === "list") {
      const { takes, words } = asked.each;
      if (takes === "fields") return parts(asked);
      return words.length ? ticked(asked, now) : lines(asked, now);
    }
    const kinds = { word: choice, number, "yes or no": yesOrNo, code, fields, names: named };
    return (kinds[asked.takes] || text)(asked, now);
  }

  Object.assign(preview, { control, isEmpty, said });
})();
