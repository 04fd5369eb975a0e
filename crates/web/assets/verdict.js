// The verdict at the hive, out of reach: the table made at the last sync, multiplied by what was tapped since.
// The server's arithmetic is crates/watch/src/sign_table.rs; a browser test holds this against it.

export const VERSION = 1;
const KINDS = 8;
const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
// Two letters hold -ln(chance) in steps of this.
const STEP = 0.005;

// A hive of the table made ready: where each sign's chances begin, and the chances.
export function opened(hive) {
  const starts = new Map();
  let width = 0;
  hive.signs.forEach(([written, hangs]) => {
    starts.set(written, { at: width, hangs });
    width += hangs ? 2 * KINDS : 2;
  });
  const chances = new Float64Array(hive.chances.length / 2);
  for (let at = 0; at < chances.length; at += 1) {
    const [high, low] = [LETTERS.indexOf(hive.chances[2 * at]), LETTERS.indexOf(hive.chances[2 * at + 1])];
    chances[at] = Math.exp(-STEP * (64 * high + low));
  }
  return { ...hive, starts, width, chances };
}

// What signs seen together say in each kind of hour: the chance of them with life, and of them.
export function told(hive, seen) {
  const known = seen.map((written) => hive.starts.get(written)).filter(Boolean);
  const kinds = Array.from({ length: KINDS }, () => [0, 0]);
  hive.masses.forEach((mass, group) => {
    const row = group * hive.width;
    kinds.forEach((told, kind) => {
      const under = (today) =>
        known.reduce(
          (product, { at, hangs }) => product * hive.chances[row + at + (hangs ? today * KINDS + kind : today)],
          1,
        );
      const both = mass * (hive.quiet * under(0) + (1 - hive.quiet) * under(1));
      if (group < hive.living) told[0] += both;
      told[1] += both;
    });
  });
  return kinds;
}

// Chance of life, after what hives of the same hour showed.
export function alive(hive, seen, beside = []) {
  let [living, all] = [0, 0];
  told(hive, seen).forEach(([one, other], kind) => {
    const hour = beside.reduce((chance, neighbour) => chance * neighbour[kind][1], hive.hours[kind]);
    living += hour * one;
    all += hour * other;
  });
  return living / Math.max(all, 1e-300);
}

const doubt = (p) => [p, 1 - p].reduce((sum, one) => (one > 0 ? sum - one * Math.log2(one) : sum), 0);

// What a question with these answers would tell of life after what was seen, in bits.
export function information(hive, seen, answers) {
  let [all, living, after] = [0, 0, 0];
  for (const answer of answers.filter((written) => hive.starts.has(written))) {
    let [one, other] = [0, 0];
    told(hive, [...seen, answer]).forEach(([a, b], kind) => {
      one += hive.hours[kind] * a;
      other += hive.hours[kind] * b;
    });
    if (other <= 0) continue;
    all += other;
    living += one;
    after += other * doubt(one / other);
  }
  return all > 0 ? Math.max(0, doubt(living / all) - after / all) : 0;
}
