// The time of day as a teacher says it, 1.52.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const hall = (bank.hall ||= {});
  const two = (number) => String(number).padStart(2, "0");

  hall.clock = (time) => {
    const at = new Date(time);
    return `${at.getHours() % 12 || 12}.${two(at.getMinutes())}`;
  };
})();
