// As build_tools/views/lesson/groups_in_words.py: groups as a teacher says them, and how to make them.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});
  const ONES = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
    "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen",
    "nineteen"];
  const TENS = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];
  const NAMES = { 2: ["pair", "pairs"], 3: ["three", "threes"], 4: ["four", "fours"],
    5: ["five", "fives"], 6: ["six", "sixes"] };
  const PAIRS_MAKE = {
    0: "Join the nearest pair to make a four.",
    1: "Join the nearest pair to make a four. The three joins a pair to make a five.",
    3: "Join the nearest pair to make a four. The three stays a three.",
  };
  const ODD_GROUP =
    /\b(?:threes?|fours?|fives?|sixes|shares?|sharing|one over|(?:pair|three) over|extra)\b/i;

  const count = (sizes, size) => sizes.filter((one) => one === size).length;
  const listed = (words) =>
    words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

  sums.numberInWords = (number) => {
    if (number < ONES.length) return ONES[number];
    if (number > 99) return String(number);
    const ones = number % 10;
    return TENS[Math.floor(number / 10) - 2] + (ones ? `-${ONES[ones]}` : "");
  };

  sums.groupsInWords = (sizes) => {
    if (!sizes.length) return "nobody";
    const counted = [...new Set(sizes)].sort((a, b) => b - a).map((size) => [size, count(sizes, size)]);
    counted.sort((a, b) => b[1] - a[1]);
    return listed(counted.map(([size, many]) => named(size, many)));
  };

  sums.groupsSentence = (sizes, before) => {
    if (!sizes.length || sizes[0] === 1) return "Find a space of your own.";
    if (sizes.length === 1) return "All together.";
    if (count(sizes, 2) >= sizes.length - 1 && sizes[0] < 4) {
      return `Turn to the nearest person.${sizes[0] === 3 ? " One over makes a three." : ""}`;
    }
    const over = sizes.reduce((sum, size) => sum + size, 0) % 4;
    if (before === "pairs" && over in PAIRS_MAKE && count(sizes, 4) >= sizes.length - 1) {
      return PAIRS_MAKE[over];
    }
    if (sizes.length === 2) {
      const [here, there] = sizes.map(sums.numberInWords);
      return `Make two groups, one on each side of the hall: ${here} here and ${there} there.`;
    }
    return `Number off from one to ${sums.numberInWords(sizes.length)}, and start again at one. ` +
      "Stand with everyone who has your number.";
  };

  sums.oddGroup = (sizes, size, partners) => {
    const odd = sizes.filter((one) => one !== size);
    if (!odd.length || size === 1 || !(odd[0] in NAMES) || Math.max(size, ...sizes) > 6) return "";
    if (partners && ODD_GROUP.test(partners)) return partners;
    const name = NAMES[odd[0]][0];
    if (odd[0] > size) return `In a ${name}, two pupils dance the same part together.`;
    return `In a ${name}, the last part is left out.`;
  };

  function named(size, many) {
    const [number, which] = [sums.numberInWords(many), many === 1 ? 0 : 1];
    if (size === 1) return `${number} ${["pupil", "pupils"][which]} alone`;
    if (size in NAMES) return `${number} ${NAMES[size][which]}`;
    return `${number} ${["group", "groups"][which]} of ${size}`;
  }
})();
