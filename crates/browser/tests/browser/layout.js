// Faults of layout, as words. Argument: the page.
const faults = [];
const page = arguments[0];
const told = (one) => `<${one.tagName.toLowerCase()}> ${(one.innerText || one.getAttribute("aria-label") || one.id || one.name || "").trim().slice(0, 40)}`;
const shown = (one) => one.checkVisibility({ checkOpacity: false, checkVisibilityCSS: true }) && one.getClientRects().length > 0;

// Not the window's own width: on a phone that grows with what is too wide.
const across = document.documentElement.clientWidth;
if (document.documentElement.scrollWidth > across) {
  const wide = [...document.body.querySelectorAll("*")].find((one) => {
    const scrolls = one.closest(".wide");
    return !scrolls && one.getBoundingClientRect().right > across + 1 && shown(one);
  });
  faults.push(`scrolls sideways, ${document.documentElement.scrollWidth} px: ${wide ? told(wide) : "?"}`);
}

// On a phone rows stand as cards: nothing is to be pushed aside to be read.
for (const one of document.querySelectorAll("main .wide")) {
  if (across <= 544 && shown(one) && one.scrollWidth > one.clientWidth + 1) {
    faults.push(`a table scrolls sideways, ${one.scrollWidth} px: ${told(one)}`);
  }
}

// A link within a sentence is as high as its line; everything else is a target for a thumb.
const inSentence = (one) => {
  if (getComputedStyle(one).display !== "inline") return false;
  const around = one.closest("p,li,dd,td,th,h1,h2,h3,caption,label,legend,figcaption,span");
  return around !== null && around.innerText.trim().length > one.innerText.trim().length;
};
const least = page.startsWith("/round") && page !== "/round/sheet" ? 56 : 44;
for (const one of document.querySelectorAll("main a[href], main button, main select, main summary, main input:not([type=hidden]), header nav a, header nav summary")) {
  if (!shown(one) || one.closest(".unseen, [aria-hidden=true]") || one.classList.contains("unseen") || one.tabIndex < 0) continue;
  if (one.tagName === "A" && (inSentence(one) || one.closest("svg"))) continue;
  const box = one.getBoundingClientRect();
  const height = Math.max(box.height, one.closest("label")?.getBoundingClientRect().height ?? 0);
  const isWords = one.tagName === "A";
  const wanted = isWords ? 44 : least;
  if (height < wanted - 0.5) faults.push(`target ${height.toFixed(0)} px high: ${told(one)}`);
}

// Type to be read at arm's length.
const small = new Map();
const walker = document.createTreeWalker(document.querySelector("main"), NodeFilter.SHOW_TEXT);
while (walker.nextNode()) {
  const one = walker.currentNode.parentElement;
  if (walker.currentNode.data.trim() === "" || one.closest("svg, .unseen, sup, sub") || !shown(one)) continue;
  const size = parseFloat(getComputedStyle(one).fontSize);
  if (size < 16) small.set(size, told(one));
}
for (const [size, where] of small) faults.push(`type of ${size} px: ${where}`);

// Words in pictures, as large as they come out on the glass.
let smallest = Infinity, which = "";
for (const one of document.querySelectorAll("main svg text")) {
  if (!shown(one) || one.textContent.trim() === "") continue;
  const scale = one.getScreenCTM()?.d ?? 1;
  const size = parseFloat(getComputedStyle(one).fontSize) * Math.abs(scale);
  if (size < smallest) [smallest, which] = [size, one.textContent];
}
// A picture shrinks with a narrower glass.
if (smallest < 12.5 * Math.min(1, across / 390)) faults.push(`words in a picture ${smallest.toFixed(1)} px: ${which}`);

// A bar that stays in sight must not cover what has been scrolled to.
const bar = document.querySelector(".keep");
if (bar && bar.getBoundingClientRect().height > innerHeight / 4) faults.push("the bar below covers a quarter of the page");
return faults;
