// Whether two words are the same but for their ending, or but for a slip of the fingers. No DOM.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const finding = (bank.finding ||= {});
  const ENDINGS = ["ations", "ation", "ings", "ing", "ies", "ians", "ian", "oes", "es", "ed", "s", "y"];
  const LEAST_STEM = 3;
  const MOST_SLIPS = 2;

  finding.stem = (word) => {
    for (const end of ENDINGS) {
      if (word.endsWith(end) && word.length - end.length >= LEAST_STEM) return word.slice(0, -end.length);
    }
    return word;
  };

  // the same, or in another form
  finding.sameWord = (typed, word) => word === typed || finding.stem(typed) === finding.stem(word);

  // three letters are little to go by
  finding.slipsAllowed = (typed) => (typed.length < 4 ? 0 : typed.length < 7 ? 1 : MOST_SLIPS);

  // How many letters are added, lost, changed or swapped with a neighbour; more than two are not counted.
  finding.slipsBetween = (a, b) => {
    if (Math.abs(a.length - b.length) > MOST_SLIPS) return MOST_SLIPS + 1;
    let [before, row] = [[], [...Array(b.length + 1).keys()]];
    for (let i = 1; i <= a.length; i += 1) {
      const next = [i];
      for (let j = 1; j <= b.length; j += 1) {
        const change = row[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1);
        let least = Math.min(row[j] + 1, next[j - 1] + 1, change);
        if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) least = Math.min(least, before[j - 2] + 1);
        next.push(least);
      }
      [before, row] = [row, next];
    }
    return row[b.length];
  };

  // People seldom get the first letter wrong, other than swapped with the second.
  const begins = (a, b) => a[0] === b[0] || (a[0] === b[1] && a[1] === b[0]);

  // The known words that are fewest slips away from what was typed; none where that is too many.
  // Letters that a word has and the other has not are slips too, and are counted a hundred times faster.
  finding.setRight = (typed, known) => {
    const most = finding.slipsAllowed(typed);
    const letters = lettersOf(typed);
    let [fewest, found] = [most, []];
    for (const word of known) {
      if (!begins(typed, word)) continue;
      if (Math.abs(word.length - typed.length) > fewest || apart(letters, lettersOf(word)) > 2 * fewest) continue;
      const slips = finding.slipsBetween(typed, word);
      if (slips < 1 || slips > fewest) continue;
      if (slips < fewest) [fewest, found] = [slips, []];
      found.push(word);
    }
    return found;
  };

  function lettersOf(word) {
    let letters = 0;
    for (const one of word) letters |= 1 << (one.charCodeAt(0) % 32);
    return letters;
  }

  function apart(a, b) {
    let bits = a ^ b;
    let many = 0;
    for (; bits; bits &= bits - 1) many += 1;
    return many;
  }
})();
