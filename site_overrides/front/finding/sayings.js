// What the finder says: how many were found, what it read, and an honest no. No DOM.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const finding = (bank.finding ||= {});

  finding.listed = (words, last = "and") =>
    (words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}`);
  finding.quoted = (words) => `“${words}”`;

  // One or two sentences on what was found. `ask` is what was asked, `found` what came of it.
  finding.said = (ask, found) => {
    const typed = ask.words.map(finding.quoted);
    const lines = [];
    const missed = found.unknown.map(finding.quoted);
    if (found.setRight.length) lines.push(`Looked for ${finding.listed(found.setRight.map(finding.quoted))}.`);
    if (ask.words.length && !found.how) {
      lines.push(`No unit has anything near ${finding.listed(typed, "or")}.`, "Try another word, or look through the topics below.");
      return lines.join(" ");
    }
    if (ask.unread) lines.push("No unit is for that school year.");
    if (missed.length) lines.push(`Nothing has ${finding.listed(missed, "or")}.`);
    const many = found.units.length;
    const counted = many === 1 ? "1 unit" : `${many} units`;
    if (!found.exactly) {
      const others = found.otherYears ? ", of other years" : "";
      lines.push(`No unit ${finding.listed(found.notMet)}.`, many ? `The nearest, by year, then minutes, then topic: ${counted}${others}.` : "");
    } else if (found.how === "near") {
      lines.push(`No unit is about ${finding.listed(typed)}. Near it: ${counted}.`);
    } else if (found.how === "said") {
      lines.push(`No unit is about ${finding.listed(typed)}, but the word comes in ${counted}.`);
    } else {
      lines.push(`${counted} found.`);
    }
    return lines.filter(Boolean).join(" ");
  };

  // How the unit fits a session of so many minutes.
  finding.fitSaid = (needs, minutes) => {
    const taken = finding.sessions(needs, minutes);
    if (taken === null) return `Too long for ${minutes} minutes: it needs ${finding.leastMinutes(needs)} at least, in two sessions a lesson.`;
    if (taken > needs.lessons.length) return `${taken} sessions in your ${minutes} minutes.`;
    if (needs.planned === minutes) return `Planned for your ${minutes} minutes.`;
    return `Planned for ${needs.planned} minutes, fits your ${minutes}.`;
  };
})();
