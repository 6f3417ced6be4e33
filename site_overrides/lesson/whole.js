// Once the first screen is there, the rest of the page is laid out too; the styles wait for it no longer.
(() => {
  const root = document.documentElement;
  const whole = () => root.setAttribute("data-whole", "");
  if (document.readyState === "complete") whole();
  else window.addEventListener("load", whole);
})();
