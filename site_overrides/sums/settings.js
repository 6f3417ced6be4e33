// A teacher's settings: kept on this device under one key till the school year ends, carried in the address.
// No page is asked.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const { gettext } = bank;
  const KEY = "dance-unit-bank";
  const VERSION = 1;
  const REFUSED = gettext("This browser keeps nothing for this page, so your settings last until you close it.");
  const CORRUPT = gettext("What was kept on this device could not be read, so this page starts afresh.");
  const NONSENSE = gettext("The settings in this page’s address could not be read, so they are left out.");
  const MOST_MINUTES = 240;
  const MOST_PUPILS = 120;
  const NUMBER = "(0|[1-9][0-9]{0,2})";
  const SPACE = "(full|half|classroom|unknown|[1-9][0-9]?x[1-9][0-9]?[ms])";
  const CODE = new RegExp(`^${NUMBER}-${NUMBER}-${NUMBER}-${NUMBER}-${SPACE}$`);
  const SEEN = ["seen", "not-yet"];
  const PLACE = /^(?:lesson-[1-9][0-9]?|card)(?=&|$)/; // a way to look at a page
  const KEPT_NAME = /^[a-z0-9][a-z0-9/-]*$/;

  const listeners = [];
  const troubles = new Set();
  const addresses = new WeakMap();
  let undated = false;
  let kept = read();
  // what was kept before days were written down is kept from today
  if (undated) write(() => {});
  let fit = kept.fit;
  let fromAddress = false;

  const settings = (bank.settings = {
    fit: () => fit && { ...fit },
    keepFit(value) {
      if (value !== null && codeOf(value) === null) return false;
      fit = value && fromCode(codeOf(value));
      write((all) => { all.fit = fit; });
      showInAddress();
      changed();
      return true;
    },
    code: codeOf,
    fromCode,
    linked,
    carry,
    seen: (unit, lesson) => kept.seen[`${unit}/${lesson}`] ?? null,
    keepSeen(unit, lesson, value) {
      if (value !== null && !SEEN.includes(value)) return false;
      keepSeen(unit, lesson, value);
      changed();
      return true;
    },
    get: (name) => copy(kept.kept[name] ?? null),
    keep(name, value) {
      if (!KEPT_NAME.test(name)) return false;
      write((all) => {
        if (value === null || value === undefined) delete all.kept[name];
        else all.kept[name] = copy(value);
      });
      return true;
    },
    everything: () => copy(kept),
    // the year on whose 31 August it all goes
    keptUntil: () => bank.sums.schoolYearEnds(today()),
    forget() {
      try { storage()?.removeItem(KEY); } catch { troubles.add(REFUSED); }
      forgotten();
    },
    get keepsNothing() { return troubles.has(REFUSED); },
    get trouble() { return [...troubles].join(" "); },
    onChange(listener) { listeners.push(listener); },
  });

  takeAddress();
  carry();
  window.addEventListener("hashchange", () => { if (takeAddress()) changed(); });
  window.addEventListener("storage", (event) => {
    if (event.key !== KEY && event.key !== null) return;
    if (event.newValue === null) {
      forgotten();
      return;
    }
    const before = JSON.stringify([fit, kept.seen]);
    kept = read();
    if (!fromAddress) fit = kept.fit;
    if (JSON.stringify([fit, kept.seen]) !== before) changed();
  });

  function codeOf(value) {
    if (!value || typeof value !== "object") return null;
    const { available, changing, dancing, watching, space } = value;
    if (![available, changing, dancing, watching].every(Number.isInteger)) return null;
    const code = [available, changing, dancing, watching, space].join("-");
    return fromCode(code) ? code : null;
  }

  function fromCode(text) {
    const found = CODE.exec(text);
    if (!found) return null;
    const [available, changing, dancing, watching] = found.slice(1, 5).map(Number);
    if (!(changing < available && available <= MOST_MINUTES)) return null;
    if (dancing < 1 || dancing > MOST_PUPILS || watching > MOST_PUPILS) return null;
    return { available, changing, dancing, watching, space: found[5] };
  }

  function empty() {
    return { fit: null, seen: Object.create(null), kept: Object.create(null) };
  }

  // null where the browser refuses, and everything lives for as long as the page does
  function storage() {
    try {
      return window.localStorage;
    } catch {
      troubles.add(REFUSED);
      return null;
    }
  }

  function read() {
    let text = null;
    try {
      text = storage()?.getItem(KEY) ?? null;
    } catch {
      troubles.add(REFUSED);
    }
    if (text === null) return empty();
    try {
      const data = JSON.parse(text);
      if (isOver(data)) {
        storage().removeItem(KEY);
        return empty();
      }
      undated = data.day === undefined;
      return sound(data);
    } catch {
      troubles.add(CORRUPT);
      return empty();
    }
  }

  function today() { return bank.sums.day(Date.now()); }

  // a day of a school year to come was written down by a clock that went wrong, and may stay for ever
  function isOver(data) {
    const { schoolYearEnds } = bank.sums;
    return data?.version === VERSION && data.day !== undefined && schoolYearEnds(data.day) !== schoolYearEnds(today());
  }

  function forgotten() {
    kept = empty();
    fit = null;
    fromAddress = false;
    troubles.delete(CORRUPT);
    if (parts(window.location.hash).size) putAddress([]);
    changed();
  }

  function sound(data) {
    const all = empty();
    if (!data || data.version !== VERSION) throw new Error("another version");
    if (data.fit != null) {
      all.fit = fromCode(codeOf(data.fit));
      if (!all.fit) troubles.add(CORRUPT);
    }
    for (const [where, value] of Object.entries(data.seen ?? {})) {
      if (SEEN.includes(value)) all.seen[where] = value;
      else troubles.add(CORRUPT);
    }
    // what a card or a wall kept is of no use the next day
    for (const [name, value] of Object.entries(data.kept ?? {})) {
      if (!value?.day || value.day === today()) all.kept[name] = value;
    }
    return all;
  }

  // another page may have kept something since, so the change is made to what is there now
  function write(change) {
    const refused = troubles.has(REFUSED);
    if (!refused) kept = read();
    change(kept);
    try {
      storage()?.setItem(KEY, JSON.stringify({ version: VERSION, day: today(), ...kept }));
    } catch {
      troubles.add(REFUSED);
    }
  }

  function keepSeen(unit, lesson, value) {
    write((all) => {
      if (value === null) delete all.seen[`${unit}/${lesson}`];
      else all.seen[`${unit}/${lesson}`] = value;
    });
  }

  function here() {
    const root = document.querySelector("[data-lesson][data-unit]");
    return root ? { unit: root.dataset.unit, lesson: Number(root.dataset.lesson) } : null;
  }

  function parts(fragment) {
    let text = fragment.replace(/^#/, "");
    try { text = decodeURIComponent(text); } catch { /* a stray % is no code, and is told below */ }
    const found = new Map();
    for (const part of text.split("&")) {
      const [name, ...value] = part.split("=");
      if (value.length && (name === "fit" || name === "last")) found.set(name, value.join("="));
    }
    return found;
  }

  function takeAddress() {
    const found = parts(window.location.hash);
    troubles.delete(NONSENSE);
    let taken = false;
    if (found.has("fit")) {
      const given = fromCode(found.get("fit"));
      if (given) {
        fit = given;
        fromAddress = taken = true;
        write((all) => { all.fit = given; });
      } else {
        troubles.add(NONSENSE);
      }
    }
    if (found.has("last")) {
      const where = here();
      if (!SEEN.includes(found.get("last"))) {
        troubles.add(NONSENSE);
      } else if (where && where.lesson > 1) {
        keepSeen(where.unit, where.lesson - 1, found.get("last"));
        taken = true;
      }
    }
    return taken;
  }

  function linked(href) {
    const [page, fragment = ""] = href.split(/#(.*)/s);
    // a link to a place on a page goes to that place; one to a lesson's, on a page of several, or to a card says more
    const place = PLACE.exec(fragment)?.[0];
    if (fragment && fragment !== place && !parts(fragment).size) return href;
    const carried = place ? [place] : [];
    if (fit) carried.push(`fit=${codeOf(fit)}`);
    const last = lastFor(place && page === "wall.html" ? `${place}.html` : page);
    if (last) carried.push(`last=${last}`);
    return carried.length ? `${page}#${carried.join("&")}` : page;
  }

  function lastFor(page) {
    const lesson = /^(?:\.\/)?lesson-(\d+)\.html$/.exec(page);
    const where = here();
    return lesson && where ? settings.seen(where.unit, Number(lesson[1]) - 1) : null;
  }

  function carry() {
    for (const link of document.querySelectorAll("a[data-carry]")) {
      if (!addresses.has(link)) addresses.set(link, link.getAttribute("href"));
      link.setAttribute("href", linked(addresses.get(link)));
    }
  }

  // so that a reload finds the same where the address speaks or nothing else can
  function showInAddress() {
    const spoken = parts(window.location.hash);
    if (!spoken.size && !troubles.has(REFUSED)) return;
    const carried = fit ? [`fit=${codeOf(fit)}`] : [];
    if (SEEN.includes(spoken.get("last"))) carried.push(`last=${spoken.get("last")}`);
    putAddress(carried);
  }

  function putAddress(carried) {
    troubles.delete(NONSENSE);
    const place = PLACE.exec(window.location.hash.slice(1))?.[0];
    if (place) carried.unshift(place);
    const address = carried.length ? `#${carried.join("&")}` : window.location.href.split("#")[0];
    try { window.history.replaceState(null, "", address); } catch (error) { console.error("settings:", error); }
  }

  function changed() {
    carry();
    for (const listener of listeners) {
      try { listener(); } catch (error) { console.error("settings:", error); }
    }
  }

  function copy(value) {
    return value === null ? null : JSON.parse(JSON.stringify(value));
  }
})();
