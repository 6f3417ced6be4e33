// Groups as a teacher says them, and what to say so that pupils are in them in half a minute.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});
  const { gettext, ngettext, row } = bank;
  // groups of a size, `many` of them
  const GROUPS = {
    1: (many, said) => ngettext("{number} pupil alone", "{number} pupils alone", many, said),
    2: (many, said) => ngettext("{number} pair", "{number} pairs", many, said),
    3: (many, said) => ngettext("{number} three", "{number} threes", many, said),
    4: (many, said) => ngettext("{number} four", "{number} fours", many, said),
    5: (many, said) => ngettext("{number} five", "{number} fives", many, said),
    6: (many, said) => ngettext("{number} six", "{number} sixes", many, said),
  };
  const IN_A = {
    2: gettext("In a pair"), 3: gettext("In a three"), 4: gettext("In a four"), 5: gettext("In a five"),
    6: gettext("In a six"),
  };
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
  const ODD_GROUP =
    /\b(?:threes?|fours?|fives?|sixes|shares?|sharing|one over|(?:pair|three) over|extra)\b/i;

  const count = (sizes, size) => sizes.filter((one) => one === size).length;

  // groups by size, as many of one size together: six fours and one three
  sums.groupsInWords = (sizes) => {
    if (!sizes.length) return gettext("nobody");
    const counted = [...new Set(sizes)].sort((a, b) => b - a).map((size) => [size, count(sizes, size)]);
    counted.sort((a, b) => b[1] - a[1]);
    return row(counted.map(([size, many]) => named(size, many)));
  };

  // What to say to get pupils into the groups of a lesson whose steps are grouped so, at the first step
  // with this grouping; `today` are the groupings of today's steps alone. Numbering off from one to the
  // number of groups gives these very sizes, in any room.
  sums.groupsSentence = (groupings, grouping, pupils, today = groupings) => {
    const sizes = sums.classGroups(groupings, grouping, pupils);
    if (!sizes.length || sizes[0] === 1) return gettext("Find a space of your own.");
    if (sizes.length === 1) return gettext("All together.");
    if (count(sizes, 2) >= sizes.length - 1 && sizes[0] < 4) {
      const left = sizes[0] === 3 ? ` ${gettext("If one pupil is left, make a three.")}` : "";
      return gettext("Turn to the nearest person.") + left;
    }
    const from = sums.joinedFrom(groupings, grouping);
    if (from) return joining(sizes, from, grouping, today.slice(0, today.indexOf(grouping)));
    if (sizes.length === 2) {
      const [here, there] = sizes.map(sums.numberInWords);
      return gettext("Make two groups, one on each side of the hall: {here} here and {there} there.", { here, there });
    }
    return gettext(
      "Number off from one to {last}, and start again at one. Stand with everyone who has your number.",
      { last: sums.numberInWords(sizes.length) },
    );
  };

  // what a group of another size than `size` changes; the line on partners where it speaks of this
  sums.oddGroup = (sizes, size, partners) => {
    const odd = sizes.filter((one) => one !== size);
    if (!odd.length || size === 1 || !(odd[0] in IN_A) || Math.max(size, ...sizes) > 6) return "";
    if (partners && ODD_GROUP.test(partners)) return partners;
    const group = IN_A[odd[0]];
    if (odd[0] === size + 1) return gettext("{group}, two pupils dance the same part together.", { group });
    if (odd[0] > size) return gettext("{group}, two of the parts are danced by two pupils each.", { group });
    return size - odd[0] === 1
      ? gettext("{group}, nobody dances the last part: count its counts, and all wait.", { group })
      : gettext("{group}, nobody dances the last parts: count their counts, and all wait.", { group });
  };

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

  function named(size, many) {
    const number = sums.numberInWords(many);
    if (size in GROUPS) return GROUPS[size](many, { number });
    return ngettext("{number} group of {size}", "{number} groups of {size}", many, { number, size });
  }
})();
