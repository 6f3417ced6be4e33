// Which units the typed words lead to, and how surely. No DOM, and no loading: the parts are given.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const finding = (bank.finding ||= {});
  const ABOUT = 0;
  const IN_IT = 1;
  const WORTH = [10, 6, 4, 1]; // of a word that the unit is about, has in it, is near to, only says
  finding.HOW = ["about", "about", "near", "said"];

  // For one typed word: unit number → how, the best that any form of it has. A word that only begins so
  // is looked at where there is none that is typed whole: sea is not the seasons.
  finding.postingsOf = (typed, part) => {
    const words = Object.keys(part ?? {});
    const whole = words.filter((word) => finding.sameWord(typed, word));
    const found = new Map();
    for (const word of whole.length ? whole : words.filter((one) => one.startsWith(typed))) {
      part[word].forEach((units, how) => {
        for (const unit of units) found.set(unit, Math.min(how, found.get(unit) ?? how));
      });
    }
    return found;
  };

  // `met` has the postings of each typed word. Gives { how, units }: units by their worth, those alone
  // that are met by most words, and of them those that are met best: about it, near it, or it is said.
  finding.search = (met, all) => {
    const known = met.filter((one) => one.size);
    if (!known.length) return { how: null, units: [] };
    const scores = new Map();
    for (const postings of known) {
      const rare = Math.log(1 + all / postings.size);
      for (const [unit, how] of postings) {
        const score = scores.get(unit) ?? { unit, words: 0, how: ABOUT, worth: 0 };
        score.words += 1;
        score.how = Math.max(score.how, how);
        score.worth += WORTH[how] * rare;
        scores.set(unit, score);
      }
    }
    const found = [...scores.values()];
    const most = Math.max(...found.map((one) => one.words));
    const many = found.filter((one) => one.words === most);
    const best = Math.min(...many.map((one) => one.how));
    const level = Math.max(best, IN_IT);
    return {
      how: finding.HOW[best],
      words: most,
      units: many.filter((one) => one.how <= level).sort((a, b) => b.worth - a.worth || a.unit - b.unit),
    };
  };
})();
