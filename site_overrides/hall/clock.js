// The time of day as a teacher says it, 1.52, and the day by which a kept card is known for today's.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const hall = (bank.hall ||= {});
  const two = (number) => String(number).padStart(2, "0");

  hall.clock = (time) => {
    const at = new Date(time);
    return `${at.getHours() % 12 || 12}.${two(at.getMinutes())}`;
  };

  hall.day = (time) => {
    const at = new Date(time);
    return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  };
})();
