// What this browser keeps of each flock, in case the page is closed by mistake. It is no substitute for the file.

/**
 * @typedef {object} Kept
 * @property {string} name of the flock file
 * @property {string} text
 * @property {string} holding
 * @property {string} at when, as Date writes it
 * @property {boolean} saved whether the file says the same
 * @property {string} by the window that wrote it
 */

const prefix = 'paperflock:';
const thisWindow = crypto.randomUUID?.() ?? String(Math.random());

/** Null where the browser forbids it, as private windows may. @type {Storage | null} */
const storage = (() => {
  try {
    localStorage.setItem(prefix, '');
    localStorage.removeItem(prefix);
    return localStorage;
  } catch {
    return null;
  }
})();

export const keeps = storage !== null;

/** All flocks that are kept, the newest first. @returns {Kept[]} */
export function kept() {
  return Object.keys(storage ?? {}).filter(key => key.startsWith(prefix)).map(key => look(key.slice(prefix.length))).filter(found => found !== null)
    .sort((a, b) => b.at.localeCompare(a.at));
}

/** @param {string} name @returns {Kept | null} */
export function look(name) {
  try {
    const found = JSON.parse(storage?.getItem(prefix + name) ?? 'null');
    return found && typeof found.text === 'string' && typeof found.at === 'string' ? { ...found, name } : null;
  } catch {
    return null;
  }
}

/** What this window has last read or written of a flock, by which it sees that another has written since. @type {Map<string, string>} */
const seen = new Map();

/** From now on this window writes to it. @param {string} name */
export function take(name) {
  seen.set(name, storage?.getItem(prefix + name) ?? '');
}

/**
 * Keeps a flock, never over what another window has kept since this one took it.
 * @param {string} name @param {string} text @param {string} holding @param {boolean} saved
 * @returns {'kept' | 'elsewhere' | 'no room' | 'forbidden'}
 */
export function keep(name, text, holding, saved) {
  if (!storage) return 'forbidden';
  const before = storage.getItem(prefix + name) ?? '';
  if (before !== (seen.get(name) ?? '')) return 'elsewhere';
  const now = JSON.stringify({ text, holding, saved, at: new Date().toISOString(), by: thisWindow });
  try {
    storage.setItem(prefix + name, now);
  } catch {
    return 'no room';
  }
  seen.set(name, now);
  return 'kept';
}

/** @param {string} name */
export function forget(name) {
  storage?.removeItem(prefix + name);
  seen.delete(name);
}

/** A name under which nothing is kept: `hollin-bank (2).yaml`. @param {string} name */
export function freeName(name) {
  const [stem, ending] = [name.replace(/\.ya?ml$/i, ''), /\.ya?ml$/i.exec(name)?.[0] ?? ''];
  for (let n = 2; ; n++) {
    const free = `${stem} (${n})${ending}`;
    if (!storage?.getItem(prefix + free)) return free;
  }
}
