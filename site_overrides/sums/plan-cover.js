// What a year plan covers and where its order is broken, for the units that are chosen by hand.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});

  // `chosen` has for each slot the number of a unit, or null. Of each word, in how many slots it
  // comes; and each fault as its kind, the slot, and what else it is about.
  sums.planCover = (plan, chosen) => {
    const times = plan.words.map(() => 0);
    const first = new Map();
    const faults = [];
    chosen.forEach((unit, slot) => {
      if (unit === null) return;
      for (const word of plan.units[unit].words) times[word] += 1;
      if (first.has(unit)) faults.push(["twice", slot, unit]);
      else first.set(unit, slot);
      if (plan.units[unit].lessons > plan.slots[slot]) faults.push(["long", slot, unit]);
    });
    for (const [unit, slot] of first) {
      const { after, needs } = plan.units[unit];
      for (const other of after) {
        if (first.has(other) && first.get(other) > slot) faults.push(["order", slot, other]);
      }
      for (const other of needs) if (!first.has(other)) faults.push(["need", slot, other]);
    }
    plan.wishes.forEach(([, slot, units], number) => {
      const found = slot === null ? chosen : [chosen[slot]];
      if (!found.some((unit) => units.includes(unit))) faults.push(["wish", slot, number]);
    });
    return { times, faults };
  };
})();
