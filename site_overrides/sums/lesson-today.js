// The lesson as it will be taught today: fitted to the teacher's settings, in one sitting or two.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});
  const { gettext, ngettext } = bank;
  const AS_WRITTEN = ["alone", "whole class"];

  // `facts` as bank.stepFacts gives them. Gives { minutes, sittings, sentence }; a sitting is a list
  // of { step, minutes }, step 0 the recap of a second sitting.
  sums.lessonToday = (facts, fit) => {
    const planned = facts.map((one) => ({ step: one.number, minutes: one.minutes }));
    const all = planned.reduce((sum, one) => sum + one.minutes, 0);
    if (!fit) return { minutes: all, sittings: [planned], sentence: "" };
    const minutes = fit.available - fit.changing;
    const room = sums.roomToday(fit);
    const steps = room ? sums.wanting(facts, room) : facts;
    const shares = sums.shareMinutes(steps, minutes);
    if (shares) {
      const fitted = planned.map(({ step }, index) => ({ step, minutes: shares[index] }));
      return { minutes, sittings: [fitted], sentence: "" };
    }
    const { parts, sentence } = sums.sittings(steps, minutes);
    if (parts.length) return { minutes, sittings: parts, sentence };
    const asPlanned = gettext("The minutes here are the planned ones.");
    return { minutes: all, sittings: [planned], sentence: `${sentence} ${asPlanned}` };
  };

  // the minutes in which something is tried: half of the step's, as on the page, or of a team's own
  sums.toTry = (minutes, turn) => Math.max(1, Math.floor((turn?.each || minutes) / 2));

  // "twelve pairs and one three", or "" where the page's own words say it already: of a step's grouping and its halves
  sums.groupsToday = (facts, { grouping, halves }, fit) => {
    if (!fit || AS_WRITTEN.includes(grouping) || halves === "in each group") return "";
    const groupings = bank.groupings(facts);
    const words = grouping === "half class" ? halvesInWords(sums.halvesToday(groupings, fit.dancing), halves === "teams")
      : sums.groupsInWords(sums.classGroups(groupings, grouping, fit.dancing));
    return words.charAt(0).toUpperCase() + words.slice(1);
  };

  // the halves as the teams of the unit are, once the floor is loaded on which they stand
  sums.halvesToday = (groupings, pupils) =>
    (sums.floor?.halves && bank.danceOnFloor ? sums.floor.halves(bank.danceOnFloor, groupings, pupils) : sums.halves(groupings, pupils));

  // how the class dances in the hall of the day; null before the floor is loaded, or where no hall is known
  sums.roomToday = (fit) => sums.floor?.today(fit) ?? null;

  // half the class at a time: four fours, then three fours and one three
  const pupils = (many) => ngettext("{number} pupil", "{number} pupils", many, { number: sums.numberInWords(many) });

  function halvesInWords(halves, teams) {
    const [one, other] = halves.map((half) => (Math.max(...half) === 1 ? pupils(half.length) : sums.groupsInWords(half)));
    if (!other) return one ?? "";
    return teams ? gettext("team 1: {one}; then team 2: {other}", { one, other }) : gettext("{before}, then {last}", { before: one, last: other });
  }
})();
