// What to say so that pupils are in their groups in half a minute, and what a group of another size does.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});
  const { gettext, ngettext, row } = bank;
  // who joins whom: where they are in those groups already, were so today, or have yet to find them
  const JOIN = {
    "pairs fours": {
      now: gettext("Join the nearest pair to make a four."),
      again: gettext("Find your partner, then join the nearest pair to make a four."),
      first: gettext("Find a partner, then join the nearest pair to make a four."),
    },
    "pairs sixes": {
      now: gettext("Join two other pairs to make a six."),
      again: gettext("Find your partner, then join two other pairs to make a six."),
      first: gettext("Find a partner, then join two other pairs to make a six."),
    },
    "threes sixes": {
      now: gettext("Join the nearest three to make a six."),
      again: gettext("Find your three, then join the nearest three to make a six."),
      first: gettext("Find a three, then join the nearest three to make a six."),
    },
  };
  const OF_FOURS = {
    3: gettext("The three stays a three."),
    5: gettext("The three joins a pair to make a five."),
    6: gettext("If one pair is left, it joins a four to make a six."),
  };
  const count = (sizes, size) => sizes.filter((one) => one === size).length;
  // What to say to get pupils into the groups of a lesson whose steps are grouped so, at the first step
  // with this grouping; `today` are the groupings of today's steps alone, and `stood` the groups by which
  // pupils stand on spots already. Numbering off from one to the number of groups gives these very sizes,
  // in any room.
  sums.groupsSentence = (groupings, grouping, pupils, today = groupings, stood = []) => {
    const sizes = sums.classGroups(groupings, grouping, pupils);
    if (!sizes.length || sizes[0] === 1) return gettext("Find a space of your own.");
    if (sizes.length === 1) return gettext("All together.");
    // the nearest person may be of the next pair: partners can be further apart than pairs are
    if (grouping === "pairs" && stood.includes(grouping)) return gettext("Turn to your own partner.");
    if (count(sizes, 2) >= sizes.length - 1 && sizes[0] < 4) {
      const left = sizes[0] === 3 ? ` ${gettext("If one pupil is left, make a three.")}` : "";
      return gettext("Turn to the nearest person.") + left;
    }
    const from = sums.joinedFrom(groupings, grouping);
    if (from) return joining(sizes, from, grouping, today.slice(0, today.indexOf(grouping)));
    if (grouping === "half class") {
      const [here, there] = sums.halvesToday(groupings, pupils)
        .map((half) => (Math.max(...half) === 1 ? sums.numberInWords(half.length) : sums.groupsInWords(half)));
      return gettext("Make two groups, one on each side of the hall: {here} here, and {there} there.", { here, there });
    }
    return gettext(
      "Number off from one to {last}, and start again at one. Stand with everyone who has your number.",
      { last: sums.numberInWords(sizes.length) },
    );
  };

  // what to say where each pupil is alone, by the step: in a space, or on the spot they stand on
  sums.aloneSentence = (facts) => {
    const alone = facts.filter(({ grouping }) => grouping === "alone");
    const onSpots = alone.filter(({ stands }) => stands).map(({ number }) => String(number));
    const stay = gettext("Stay on your own spot.");
    const find = gettext("Say “{words}”", { words: gettext("Find a space of your own.") });
    if (!onSpots.length) return find;
    if (alone[0].stands) return gettext("Say “{words}”", { words: stay });
    const said = { steps: row(onSpots), words: stay };
    const then = ngettext("In step {steps} say “{words}”", "In steps {steps} say “{words}”", onSpots.length, said);
    return `${find} ${then}`;
  };

  // what groups of another size than `size` do; `said` has it by size, from build_tools/views/lesson/odd_groups_said.py
  sums.oddGroups = (sizes, size, said) =>
    [...new Set(sizes)].filter((one) => one !== size).map((one) => said[one]).filter(Boolean).join(" ");

  function joining(sizes, from, grouping, before) {
    const usual = grouping === "fours" ? 4 : 6;
    const odd = sizes.filter((one) => one !== usual);
    const join = JOIN[`${from} ${grouping}`];
    const known = before.includes(from) ? join.again : join.first;
    const first = before.at(-1) === from ? join.now : known;
    if (!odd.length) return first;
    const left = usual === 4 && odd.length === 1 && OF_FOURS[odd[0]];
    return `${first} ${left || gettext("That makes {groups}.", { groups: sums.groupsInWords(sizes) })}`;
  }
})();
