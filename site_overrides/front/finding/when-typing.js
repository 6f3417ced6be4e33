// The finder awake: what is typed and chosen becomes cards, as soon as its parts of the index are here.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const finding = (bank.finding ||= {});
  const AT_ONCE = 12; // cards shown before a reader asks for more
  const REST = 60; // milliseconds after the last key
  const USUAL_CLASS = 30;

  finding.start = async (form) => {
    const page = document;
    const results = page.querySelector('[data-part="results"]');
    const chosenFew = page.querySelector('[data-part="chosen-few"]');
    const found = page.querySelector('[data-part="found"]');
    const more = page.querySelector('[data-part="more"]');
    const { at } = form.dataset;
    const data = read(await finding.part("choices", `${at}choices.js`));
    for (const list of data.lists) if (!form.querySelector(`[data-asks="${list.name}"]`)) addList(form, list);
    const fields = new Map([...form.querySelectorAll("[data-asks]")].map((field) => [field.dataset.asks, field]));
    const { lists } = data;
    let turn = 0;
    let waiting = 0;
    let shown = AT_ONCE;
    for (const list of lists) fill(fields.get(list.name), list);
    // what was typed while this was on its way stays, and goes before what the address says
    take({ ...finding.fromAddress(window.location.hash), ...typedAlready() });
    form.addEventListener("input", () => {
      shown = AT_ONCE;
      results.setAttribute("aria-busy", "true");
      clearTimeout(waiting);
      waiting = setTimeout(show, REST);
    });
    window.addEventListener("hashchange", () => { take(finding.fromAddress(window.location.hash)); show(); });
    more.addEventListener("click", () => { shown += AT_ONCE; show(); });
    page.querySelector('[data-part="forget"]').addEventListener("click", () => { take({}); show(); fields.get("word").focus(); });
    await show();

    function typedAlready() {
      return Object.fromEntries([...fields].filter(([, field]) => field.value).map(([name, field]) => [name, field.value]));
    }

    function take(asked) {
      for (const [name, field] of fields) field.value = asked[name] ?? "";
    }

    // What is asked: the fields, and what the words say of year and minutes where the fields say nothing.
    function question() {
      const typed = finding.readTyped(fields.get("word").value, data.passedOver);
      const values = Object.fromEntries([...fields].map(([name, field]) => [name, field.value.trim()]));
      const years = data.lists.find((list) => list.name === "year");
      const said = years.values.filter(({ value }) => typed.years.includes(value.slice(value.lastIndexOf("-") + 1)));
      const chosen = Object.fromEntries(lists.map((list) => [list.name, values[list.name] ? [values[list.name]] : []]));
      if (!chosen.year.length) chosen.year = said.map(({ value }) => value);
      const minutes = Number(values.minutes) || typed.minutes || 0;
      return { values, words: typed.words, chosen, years: chosen.year, minutes, room: values.room, unread: typed.years.length > 0 && !said.length };
    }

    async function show() {
      const mine = (turn += 1);
      const ask = question();
      finding.keepInAddress(ask.values);
      const asked = Object.values(ask.values).some(Boolean);
      const answer = asked ? await lookUp(ask) : null;
      const cards = answer ? await Promise.all(answer.units.slice(0, shown).map((one) => cardFor(one, ask, answer))) : [];
      if (mine !== turn) return;
      results.replaceChildren(...cards.filter(Boolean));
      results.hidden = !asked;
      chosenFew.hidden = asked;
      more.hidden = !answer || answer.units.length <= shown;
      page.querySelector('[data-part="forget"]').hidden = !asked;
      const words = answer ? finding.said(ask, answer) : "";
      if (found.textContent !== words) found.textContent = words;
      for (const list of lists) countChoices(list, ask, answer);
      if (form.dataset.awake === undefined) form.dataset.awake = "";
      results.removeAttribute("aria-busy");
    }

    async function lookUp(ask) {
      const looking = await Promise.all(ask.words.map(async (word) => ({ word, ...(await look(word)) })));
      // what every lesson says of the room tells no unit apart, and is no news
      const telling = looking.filter(({ word, postings }) => postings.size || !data.ofTheHall.has(word));
      const looked = telling.length ? telling : looking;
      const { how, units } = finding.search(looked.map((one) => one.postings), data.slugs.length);
      const all = data.slugs.map((_, unit) => ({ unit, worth: 0 }));
      const pool = ask.words.length ? units : all;
      const allowed = finding.chosenUnits(data, ask.chosen);
      const fits = (unit) => !ask.minutes || finding.sessions(data.needs[unit], ask.minutes) !== null;
      const exact = pool.filter(({ unit }) => finding.has(allowed, unit) && fits(unit));
      const order = ask.words.length ? byTopicFirst(ask) : finding.byFit(data, ask);
      const nearest = [...pool].sort(finding.byFit(data, ask)).slice(0, 3);
      const ofTheYear = finding.chosenUnits(data, { year: ask.years });
      return {
        how,
        pool: finding.setOf(pool.map(({ unit }) => unit)),
        units: exact.length ? exact.sort(order) : nearest,
        exactly: exact.length > 0,
        otherYears: !exact.length && !nearest.some(({ unit }) => finding.has(ofTheYear, unit)),
        unknown: looked.filter((one) => !one.postings.size).map((one) => one.word),
        setRight: looked.flatMap((one) => one.setRight),
        notMet: notMet(ask),
      };
    }

    function byTopicFirst(ask) {
      const fit = finding.byFit(data, { ...ask, years: [] });
      return (a, b) => b.worth - a.worth || fit(a, b);
    }

    async function look(word) {
      const postings = finding.postingsOf(word, await partOf(word));
      if (postings.size) return { postings, setRight: [] };
      const known = await finding.part("known", `${at}known.js`) ?? { found: "", only: "", real: "" };
      // a word that the bank knows, or that is English, is no slip
      const only = known.only.split(" ");
      if ([...only, ...known.real.split(" ")].some((one) => finding.sameWord(word, one))) return { postings, setRight: [] };
      const right = finding.setRight(word, [...known.found.split(" "), ...only]);
      const parts = await Promise.all(right.map(partOf));
      const all = new Map();
      right.forEach((one, n) => {
        for (const [unit, how] of finding.postingsOf(one, parts[n])) all.set(unit, Math.min(how, all.get(unit) ?? how));
      });
      return { postings: all, setRight: all.size ? right.slice(0, 1) : [] };
    }

    function partOf(word) {
      const letters = word.slice(0, 2);
      return data.parts.has(letters) ? finding.part(`words-${letters}`, `${at}words-${letters}.js`) : null;
    }

    async function cardFor({ unit }, ask, answer) {
      const slug = data.slugs[unit];
      const card = await finding.part(`card-${slug}`, `units/${slug}/card.js`);
      if (!card) return null;
      const lines = [];
      if (!answer.exactly) lines.push(...whyNot(unit, ask, card));
      if (ask.minutes) lines.push(finding.fitSaid(data.needs[unit], ask.minutes));
      return finding.cardOf({ ...card, at: `units/${slug}/` }, lines, ask.room && card[ask.room], fitCode(ask));
    }

    function fitCode(ask) {
      if (!ask.minutes) return null;
      const space = { hall: "full", halfHall: "half", classroom: "classroom" }[ask.room] ?? "unknown";
      return `${ask.minutes}-0-${USUAL_CLASS}-0-${space}`;
    }

    // what of the question a unit that is only near does not meet
    function whyNot(unit, ask, card) {
      return lists.flatMap((list) => {
        const wanted = ask.chosen[list.name];
        const has = !wanted.length || wanted.some((value) => finding.has(list.sets.get(value) ?? 0n, unit));
        if (has) return [];
        if (list.name === "year") return [`It is for ${card.years.split(" · ")[0]}.`];
        return [`It does not have: ${finding.listed(words(list, wanted), "or")}.`];
      });
    }

    function words(list, wanted) {
      return list.values.filter(({ value }) => wanted.includes(value)).map((one) => one.words);
    }

    function notMet(ask) {
      const parts = lists.filter((list) => ask.chosen[list.name].length).map((list) => {
        const named = finding.listed(words(list, ask.chosen[list.name]), "or");
        return list.name === "year" ? `is for ${named}` : `has “${named}”`;
      });
      if (ask.words.length) parts.unshift(`is about ${finding.quoted(ask.words.join(" "))}`);
      if (ask.minutes) parts.push(`fits ${ask.minutes} minutes`);
      return parts;
    }

    // beside each choice how many units are left with it, of those that meet everything else
    function countChoices(list, ask, answer) {
      const rest = finding.chosenUnits(data, ask.chosen, list.name) & (answer?.pool ?? finding.everyUnit(data.slugs.length));
      for (const option of fields.get(list.name).options) {
        if (!option.value) continue;
        const { words: said } = list.values.find(({ value }) => value === option.value);
        option.textContent = `${said} – ${finding.howMany(rest & list.sets.get(option.value))}`;
      }
    }
  };

  // a list that is one tap away, after those of the line
  function addList(form, { name, asks }) {
    const field = document.createElement("p");
    const label = document.createElement("label");
    const select = document.createElement("select");
    field.className = "field";
    Object.assign(label, { htmlFor: `finder-${name}`, textContent: asks });
    Object.assign(select, { id: `finder-${name}` });
    select.dataset.asks = name;
    select.add(new Option("Any", ""));
    field.append(label, select);
    form.querySelector('[data-part="lists"]').append(field);
  }

  function fill(field, list) {
    for (const { value, words } of list.values) field.add(new Option(words, value));
  }

  // what choices.js holds, with its sets as numbers
  function read(raw) {
    return {
      slugs: raw.slugs,
      parts: new Set(raw.parts.split(" ")),
      passedOver: new Set(raw.passedOver.split(" ")),
      ofTheHall: new Set(raw.ofTheHall.split(" ")),
      needs: raw.needs.map((text) => {
        const [planned, ...lessons] = text.split(" ");
        return { planned: Number(planned), lessons: lessons.map((one) => one.split("/").map(Number)) };
      }),
      lists: raw.lists.map(({ name, asks, values }) => ({
        name,
        asks,
        values: values.map(([value, words]) => ({ value, words })),
        sets: new Map(values.map(([value, , set]) => [value, BigInt(`0x${set}`)])),
      })),
    };
  }
})();
