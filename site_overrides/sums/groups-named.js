// Groups as a teacher says them: as build_tools/views/words/groups_in_words.py has it for what is printed.
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

  const count = (sizes, size) => sizes.filter((one) => one === size).length;

  // groups by size, as many of one size together: six fours and one three
  sums.groupsInWords = (sizes) => {
    if (!sizes.length) return gettext("nobody");
    const counted = [...new Set(sizes)].sort((a, b) => b - a).map((size) => [size, count(sizes, size)]);
    counted.sort((a, b) => b[1] - a[1]);
    return row(counted.map(([size, many]) => sums.groupNamed(size, many)));
  };

  // so many groups of one size: three pairs, one four, two groups of 8
  sums.groupNamed = (size, many) => {
    const number = sums.numberInWords(many);
    if (size in GROUPS) return GROUPS[size](many, { number });
    return ngettext("{number} group of {size}", "{number} groups of {size}", many, { number, size });
  };
})();
