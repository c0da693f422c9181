// Flock files of many kinds, always the same ones: both hemispheres, one ewe to forty, marked, scanned and lambed or not, with and without groups, feeds and a shed.

/** Numerical Recipes' generator, 32 bits. @param {number} seed */
function random(seed) {
  let state = seed;
  return below => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) % 65536 * below >>> 16;
}

const places = [['54.46', '-2.74', 'Europe/London'], ['-45.03', '168.66', 'Pacific/Auckland'], ['65.8', '-24.0', 'Atlantic/Reykjavik'], ['44.2', '-72.5', 'America/New_York']];

/** @param {number} seed @param {number} [ewes] how many; drawn too where it is not said @returns {string} */
export function drawFlock(seed, ewes) {
  const draw = random(seed);
  const one = list => list[draw(list.length)];
  const [latitude, longitude, zone] = one(places);
  const day = (month, date) => `2026-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`;
  const lines = [
    'paperflock: 1', 'holding:', `  name: Drawn ${seed}`, `  code: D${seed}`, `  location: {latitude: ${latitude}, longitude: ${longitude}}`, `  time-zone: ${zone}`,
    'print:', `  paper: ${one(['A4', 'Letter'])}`, `  units: ${one(['metric', 'imperial', 'both'])}`, `  duplex: ${one(['long-edge', 'short-edge', 'single-sided'])}`,
    'season:', '  tup-in: 2026-08-10', `  gestation-days: ${145 + draw(6)}`,
  ];
  const groups = draw(2) ? ['Orchard', 'Paddock'] : [];
  if (groups.length) lines.push('groups:', ...groups.map(name => `  - {name: ${name}, tup: ${one(['Bramley', 'Damson'])}}`));
  if (draw(2)) lines.push('keeper-days:', '  free: [saturday, sunday]', '  away:', '    - {from: 2026-12-27, to: 2027-01-02, sitter: Tom Birkett, phone: 01632 960 303}');
  if (draw(2)) {
    lines.push('feeds:', `  method: ${one(['stepped', 'per-lamb', 'energy-balance'])}`, `  forage: {kind: ${one(['hay', 'haylage', 'silage'])}, bale: 20 kg}`);
    lines.push(`  concentrate: {name: Ewe nuts, bag: 20 kg, scoop: 1.${1 + draw(8)} kg}`);
  }
  if (draw(2)) lines.push('housing:', '  lambing: indoors', '  pens:', '    - {name: North bay, length: 9 m, width: 6.4 m, trough: 12 m}', `  lambing-pens: ${1 + draw(6)}`);
  lines.push('ewes:');
  for (let i = ewes ?? 1 + draw(40); i > 0; i--) {
    lines.push(`  - tag: ZZ 0123456 ${String(i).padStart(5, '0')}`);
    if (draw(4)) lines.push(`    name: ${one(['Bracken', 'Campion', 'Sorrel', 'Tēasel', 'Ŵyn'])} ${i}`);
    if (groups.length) lines.push(`    group: ${one(groups)}`);
    if (draw(2)) lines.push(`    weight: ${50 + draw(40)} kg`, `    condition: ${one(['2', '2.5', '3', '3.5'])}`);
    if (draw(3)) lines.push(`    marks: [${day(8, 11 + draw(18))}]`);
    if (draw(3)) lines.push(`    scan: ${draw(4)}`);
    if (draw(6) === 0) lines.push('    note: Needs a quiet corner');
  }
  return `${lines.join('\n')}\n`;
}
