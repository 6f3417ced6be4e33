// Lays the booklet's lessons out: they are held small in the page, and stand in full on their own pages.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const held = document.querySelector("[data-packed]:not([data-started])");
  const places = document.querySelectorAll("[data-bound]");
  const buttons = () => document.querySelectorAll(".print-here button");

  if (held) start();

  function start() {
    held.dataset.started = "";
    try {
      const parts = bank.unsqueezed(held.dataset.packed).split("\0");
      places.forEach((place, n) => { place.innerHTML = parts[n]; });
      held.remove();
      // a link into a lesson was followed before the lesson was there
      document.getElementById(decodeURIComponent(location.hash.slice(1)))?.scrollIntoView();
    } catch (error) {
      console.error("unpack:", error);
      for (const button of buttons()) button.hidden = true;
    }
    document.documentElement.toggleAttribute("data-unpacked", true);
  }
})();
