// What a teacher types: the words to look for, and a year or minutes said among them. No DOM.
// `wordsTyped` is the same as build_tools/views/finding/words_typed.py, and a test holds them together.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const finding = (bank.finding ||= {});
  const LEAST_LETTERS = 2;
  const STAGES = { 1: ["1", "2"], 2: ["3", "4", "5", "6"] }; // the key stages of primary schools in England
  const MINUTES = /\b(\d{2,3})\s*-?\s*(?:minutes?|mins?)\b/;
  const YEAR = /\b(?:year\s*|years\s*|yr\s*|y)(\d)\b/g;
  const STAGE = /\bks\s*(\d)\b/g;
  const RECEPTION = /\b(reception|eyfs)\b/g;

  finding.wordsTyped = (text) => {
    const plain = text.toLowerCase().normalize("NFD").replace(/\p{M}/gu, "");
    return (plain.match(/[a-z0-9]+/g) ?? []).filter((word) => word.length >= LEAST_LETTERS);
  };

  // { words, years, minutes }: years as written in school (R, 1, 2 …), minutes null where none are said.
  finding.readTyped = (text, passedOver) => {
    let rest = text.toLowerCase();
    const years = new Set();
    rest = rest.replace(YEAR, (_, year) => { years.add(year); return " "; });
    rest = rest.replace(STAGE, (_, stage) => { for (const one of STAGES[stage] ?? []) years.add(one); return " "; });
    rest = rest.replace(RECEPTION, () => { years.add("r"); return " "; });
    const minutes = MINUTES.exec(rest);
    rest = rest.replace(MINUTES, " ");
    const words = [...new Set(finding.wordsTyped(rest))].filter((word) => !passedOver.has(word));
    return { words, years: [...years], minutes: minutes ? Number(minutes[1]) : null };
  };
})();
