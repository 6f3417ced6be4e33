// Groups as a teacher says them, and what to say so that pupils are in them in half a minute.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});
  const NAMES = { 2: ["pair", "pairs"], 3: ["three", "threes"], 4: ["four", "fours"],
    5: ["five", "fives"], 6: ["six", "sixes"] };
  const JOIN = {
    "pairs fours": "join the nearest pair to make a four.",
    "pairs sixes": "join two other pairs to make a six.",
    "threes sixes": "join the nearest three to make a six.",
  };
  const OF_FOURS = {
    3: "The three stays a three.",
    5: "The three joins a pair to make a five.",
    6: "If one pair is left, it joins a four to make a six.",
  };
  const ODD_GROUP =
    /\b(?:threes?|fours?|fives?|sixes|shares?|sharing|one over|(?:pair|three) over|extra)\b/i;

  const count = (sizes, size) => sizes.filter((one) => one === size).length;
  const listed = (words) =>
    words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
  const capital = (words) => words.charAt(0).toUpperCase() + words.slice(1);

  // groups by size, as many of one size together: six fours and one three
  sums.groupsInWords = (sizes) => {
    if (!sizes.length) return "nobody";
    const counted = [...new Set(sizes)].sort((a, b) => b - a).map((size) => [size, count(sizes, size)]);
    counted.sort((a, b) => b[1] - a[1]);
    return listed(counted.map(([size, many]) => named(size, many)));
  };

  // What to say to get pupils into the groups of a lesson whose steps are grouped so, at the first step
  // with this grouping; `today` are the groupings of today's steps alone. Numbering off from one to the
  // number of groups gives these very sizes, in any room.
  sums.groupsSentence = (groupings, grouping, pupils, today = groupings) => {
    const sizes = sums.classGroups(groupings, grouping, pupils);
    if (!sizes.length || sizes[0] === 1) return "Find a space of your own.";
    if (sizes.length === 1) return "All together.";
    if (count(sizes, 2) >= sizes.length - 1 && sizes[0] < 4) {
      return `Turn to the nearest person.${sizes[0] === 3 ? " If one pupil is left, make a three." : ""}`;
    }
    const from = sums.joinedFrom(groupings, grouping);
    if (from) return joining(sizes, from, grouping, today.slice(0, today.indexOf(grouping)));
    if (sizes.length === 2) {
      const [here, there] = sizes.map(sums.numberInWords);
      return `Make two groups, one on each side of the hall: ${here} here and ${there} there.`;
    }
    return `Number off from one to ${sums.numberInWords(sizes.length)}, and start again at one. ` +
      "Stand with everyone who has your number.";
  };

  // what a group of another size than `size` changes; the line on partners where it speaks of this
  sums.oddGroup = (sizes, size, partners) => {
    const odd = sizes.filter((one) => one !== size);
    if (!odd.length || size === 1 || !(odd[0] in NAMES) || Math.max(size, ...sizes) > 6) return "";
    if (partners && ODD_GROUP.test(partners)) return partners;
    const name = NAMES[odd[0]][0];
    if (odd[0] === size + 1) return `In a ${name}, two pupils dance the same part together.`;
    if (odd[0] > size) return `In a ${name}, two of the parts are danced by two pupils each.`;
    return size - odd[0] === 1 ? `In a ${name}, nobody dances the last part: count its counts, and all wait.` : `In a ${name}, nobody dances the last parts: count their counts, and all wait.`;
  };

  function joining(sizes, from, grouping, before) {
    const usual = grouping === "fours" ? 4 : 6;
    const odd = sizes.filter((one) => one !== usual);
    const join = JOIN[`${from} ${grouping}`];
    const whose = before.includes(from) ? "your" : "a";
    const first = before.at(-1) === from ? capital(join) : `Find ${whose} ${from === "pairs" ? "partner" : "three"}, then ${join}`;
    if (!odd.length) return first;
    const known = usual === 4 && odd.length === 1 && OF_FOURS[odd[0]];
    return `${first} ${known || `That makes ${sums.groupsInWords(sizes)}.`}`;
  }

  function named(size, many) {
    const [number, which] = [sums.numberInWords(many), many === 1 ? 0 : 1];
    if (size === 1) return `${number} ${["pupil", "pupils"][which]} alone`;
    if (size in NAMES) return `${number} ${NAMES[size][which]}`;
    return `${number} ${["group", "groups"][which]} of ${size}`;
  }
})();
