// The words that scripts put on a page, in the page's language. English stands in the scripts; a page in
// another language loads the table page-words.js of its unit first. The names are those of GNU gettext.
(() => {
  const bank = (window.danceUnitBank ||= {});

  const filled = (words, places) =>
    words.replace(/\{(\w+)\}/g, (whole, name) => (name in places ? String(places[name]) : whole));

  // gettext("Copied: {code}", { code })
  bank.gettext = (message, places = {}) => filled(bank.pageWords?.said[message]?.[0] || message, places);

  // ngettext("{number} pupil", "{number} pupils", 3)
  bank.ngettext = (one, many, number, places = {}) => {
    const table = bank.pageWords;
    const said = table?.said[one]?.[table.form(number)] || (number === 1 ? one : many);
    return filled(said, { number, ...places });
  };

  // Things in a row: a, b and c. A language that sounds a word anew after its "and" has another way in the table.
  bank.row = (words) => {
    const { gettext } = bank;
    const [before, last] = [words.slice(0, -1).join(", "), words.at(-1)];
    return words.length < 2 ? words.join("") : gettext("{before} and {last}", { before, last });
  };
})();
