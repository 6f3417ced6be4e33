// Numbers as they are said. In another language than English they stay figures: their words would have to agree
// with what is counted.
(() => {
  const bank = (window.danceUnitBank ||= {});
  const sums = (bank.sums ||= {});
  const ONES = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
    "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen",
    "nineteen"];
  const TENS = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

  // a whole number up to 99 in words; figures from 100
  sums.numberInWords = (number) => {
    if (bank.pageWords) return String(number);
    if (number < ONES.length) return ONES[number];
    if (number > 99) return String(number);
    const ones = number % 10;
    return TENS[Math.floor(number / 10) - 2] + (ones ? `-${ONES[ones]}` : "");
  };
})();
