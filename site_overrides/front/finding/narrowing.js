// Narrowing by the lists and the minutes: which units have what is chosen, and how many each choice has.
// A set of units is a whole number with a bit for each. No DOM.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const finding = (bank.finding ||= {});
  const BITS = [..."0123456789abcdef"].map((digit) => [...parseInt(digit, 16).toString(2)].filter((bit) => bit === "1").length);
  const FAR = 99;

  finding.everyUnit = (many) => (1n << BigInt(many)) - 1n;
  finding.setOf = (units) => units.reduce((set, unit) => set | (1n << BigInt(unit)), 0n);
  finding.has = (set, unit) => ((set >> BigInt(unit)) & 1n) === 1n;
  finding.howMany = (set) => [...set.toString(16)].reduce((sum, digit) => sum + BITS[parseInt(digit, 16)], 0);

  // The units that have what is chosen from every list; `but` leaves one list out, to count its choices.
  finding.chosenUnits = (data, chosen, but = null) => {
    let set = finding.everyUnit(data.slugs.length);
    for (const list of data.lists) {
      const values = list.name === but ? [] : chosen[list.name] ?? [];
      if (values.length) set &= values.reduce((any, value) => any | (list.sets.get(value) ?? 0n), 0n);
    }
    return set;
  };

  // How many sessions of so many minutes a unit takes: the same sums as fitting a lesson. null where a
  // lesson has no room even in two; `needs` has for each lesson [at once, each of two].
  finding.sessions = (needs, minutes) => needs.lessons.reduce((taken, [atOnce, ofTwo]) => {
    if (taken === null) return null;
    if (minutes >= atOnce) return taken + 1;
    return ofTwo && minutes >= ofTwo ? taken + 2 : null;
  }, 0);

  // What a session has to last at least, for the unit to be taught in it at all.
  finding.leastMinutes = (needs) => Math.max(...needs.lessons.map(([atOnce, ofTwo]) => ofTwo || atOnce));

  // How far the unit is from the years asked for, in school years of the same nation.
  finding.yearsAway = (data, unit, years) => {
    const order = data.lists.find((list) => list.name === "year").values;
    const places = (wanted) => order.flatMap(({ value }, place) => (wanted(value) ? [[nation(value), place]] : []));
    const own = places((value) => finding.has(data.lists.find((list) => list.name === "year").sets.get(value), unit));
    const asked = places((value) => years.includes(value));
    const apart = asked.flatMap(([there, place]) => own.filter(([here]) => here === there).map(([, at]) => Math.abs(at - place)));
    return Math.min(FAR, ...apart);
  };

  // The order by fit: year, then minutes, then topic. `ask` has years and minutes; `worth` is the topic's.
  finding.byFit = (data, ask) => (a, b) => {
    for (const measure of [away, tooLong, moreSessions]) {
      const apart = measure(data, ask, a.unit) - measure(data, ask, b.unit);
      if (apart) return apart;
    }
    return (b.worth ?? 0) - (a.worth ?? 0) || notAsPlanned(data, ask, a.unit) - notAsPlanned(data, ask, b.unit) || a.unit - b.unit;
  };

  function away(data, ask, unit) { return ask.years.length ? finding.yearsAway(data, unit, ask.years) : 0; }

  function tooLong(data, ask, unit) {
    return ask.minutes ? Math.max(0, finding.leastMinutes(data.needs[unit]) - ask.minutes) : 0;
  }

  function moreSessions(data, ask, unit) {
    const needs = data.needs[unit];
    const taken = ask.minutes ? finding.sessions(needs, ask.minutes) : null;
    return taken === null ? 0 : taken - needs.lessons.length;
  }

  function notAsPlanned(data, ask, unit) {
    return ask.minutes ? Math.abs(data.needs[unit].planned - ask.minutes) : 0;
  }

  function nation(year) { return year.slice(0, year.lastIndexOf("-")); }
})();
