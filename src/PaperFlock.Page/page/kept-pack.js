// The pack that was made here last of each flock, which knows the issues there have been. It is too large for where the flocks themselves are kept.

/** @typedef {import('#page/engine.js').Earlier} Earlier */

/** @template T @param {IDBRequest<T>} request @returns {Promise<T>} */
const done = request => new Promise((resolve, reject) => {
  request.onsuccess = () => resolve(request.result);
  request.onerror = () => reject(request.error);
});

/** @template T @param {IDBTransactionMode} mode @param {(packs: IDBObjectStore) => IDBRequest<T>} ask @returns {Promise<T | null>} null where the browser forbids it */
async function packs(mode, ask) {
  try {
    const opening = indexedDB.open('paperflock', 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore('packs');
    const database = await done(opening);
    try {
      return await done(ask(database.transaction('packs', mode).objectStore('packs')));
    } finally {
      database.close();
    }
  } catch {
    return null;
  }
}

/** @param {string} flock the name of its file @returns {Promise<Earlier | null>} */
export const lookForPack = async flock => await packs('readonly', kept => kept.get(flock)) ?? null;

/** @param {string} flock the name of its file @param {Earlier} pack */
export const keepPack = (flock, pack) => packs('readwrite', kept => kept.put(pack, flock));

export const forgetPacks = () => packs('readwrite', kept => kept.clear());
