// The school year that a day is in. It ends on 31 August, since the next begins with the first term after
// July (England, Education Act 1996, section 579; maintained schools begin on 1 September).
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});
  const two = (number) => String(number).padStart(2, "0");
  const DAY = /^(\d{4})-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;

  // The day of a time of this device, such as 2026-11-28.
  sums.day = (time) => {
    const at = new Date(time);
    return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  };

  // The calendar year in which the school year of `day` ends; null where that is no day.
  sums.schoolYearEnds = (day) => {
    const found = typeof day === "string" ? DAY.exec(day) : null;
    return found && Number(found[1]) + (Number(found[2]) >= 9 ? 1 : 0);
  };
})();
