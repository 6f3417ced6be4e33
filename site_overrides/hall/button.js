// A button of a view for the hall: its words, and what a press does.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const hall = (bank.hall ||= {});

  hall.button = (words, pressed) => {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = words;
    button.addEventListener("click", pressed);
    return button;
  };
})();
