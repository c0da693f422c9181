// A page of the pack as a picture, drawn from what the engine wrote down: see PictureCanvas.cs. Texts stay texts.

const svg = 'http://www.w3.org/2000/svg';
const faces = [['Hand', '400'], ['Hand', '700'], ['HandMono', '400'], ['HandMono', '700']];

/** @param {import('#page/engine.js').Picture} picture @param {string} says what it shows, for whoever does not see it */
export function pictureOf(picture, says) {
  const sheet = make('svg', { viewBox: `0 0 ${picture.width} ${picture.height}`, class: 'sheet', role: 'img', 'aria-label': says });
  for (const drawn of picture.drawn) {
    sheet.append('d' in drawn
      ? make('path', {
        d: drawn.d,
        fill: drawn.fill === 'black' ? 'currentColor' : drawn.fill === 'white' ? 'var(--paper)' : 'none',
        stroke: drawn.stroke > 0 ? 'currentColor' : 'none',
        'stroke-width': drawn.stroke,
        ...(drawn.round ? { 'stroke-linecap': 'round', 'stroke-linejoin': 'round' } : {}),
      })
      : make('text', {
        transform: `translate(${drawn.x} ${drawn.y}) rotate(${90 * drawn.turns})`,
        'font-family': faces[drawn.face][0],
        'font-weight': faces[drawn.face][1],
        'font-size': drawn.size,
        'xml:space': 'preserve',
      }, drawn.text));
  }
  return sheet;
}

/** @param {string} tag @param {Record<string, string | number>} attributes @param {string} [text] */
function make(tag, attributes, text) {
  const element = document.createElementNS(svg, tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
  if (text !== undefined) element.textContent = text;
  return element;
}
