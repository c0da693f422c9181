// The open flock: its text, what the engine says of it, and the way back. Views read it, change it through its methods, and are told when it has changed.
import { Trouble } from '#page/engine.js';
import { keepPack, lookForPack } from '#page/kept-pack.js';
import * as store from '#page/store.js';
import { listAt } from '#page/values.js';

/** @typedef {import('#page/engine.js').Engine} Engine */
/** @typedef {import('#page/engine.js').Reading} Reading */
/** @typedef {import('#page/engine.js').Edit} Edit */

/** @typedef {import('#page/engine.js').Found} Found */
/** @typedef {import('#page/engine.js').Path} Path */
/** @typedef {import('#page/engine.js').Value} Value */

/** Steps that can be undone. */
const mostUndo = 200;

/** Milliseconds without a key, after which what was typed is read. */
const typingPause = 350;

/** Milliseconds without an edit, after which the plan is looked at again for what it warns of. */
const planningPause = 900;

/** @returns {string} the day it is on this computer's clock */
export function clockDay() {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map(part => String(part).padStart(2, '0')).join('-');
}

export class State {
  /** As most calls of the engine want it; null before one is open. @type {{ text: string, name: string, today: string } | null} */
  flock = null;
  /** Of that text on that day. @type {Reading | null} */
  reading = null;
  /** The text as it was last opened or saved. @type {string | null} */
  saved = null;
  /** What became of the last autosave. @type {'kept' | 'elsewhere' | 'no room' | 'forbidden' | null} */
  keeping = null;
  /** The newest issue of the pack that this browser has made. @type {import('#page/engine.js').Earlier | null} */
  newest = null;
  /** The day that counts as today; the page asks for it. */
  today = clockDay();
  /** Why an edit could not be made, by its path as JSON. @type {Map<string, Found[]>} */
  refused = new Map();
  /** Texts to go back to, and what was typed into after each, so that one field is one step. @type {{ text: string, typedAt: string | null }[]} */
  #undo = [];
  /** Typed and not yet in the text, by the path as JSON. @type {Map<string, { path: Path, value: Value, also: Edit[] }>} */
  #typed = new Map();
  #typing = 0;
  #planning = 0;
  /** @type {Set<() => void>} */
  #listeners = new Set();
  /** Edits follow one another, each made in what the one before it left. @type {Promise<unknown>} */
  #queue = Promise.resolve();

  /** @param {Engine} engine */
  constructor(engine) { this.engine = engine; }

  get isUnsaved() { return this.flock !== null && (this.flock.text !== this.saved || this.#typed.size > 0); }
  get canUndo() { return this.#undo.length > 0; }

  /** @param {() => void} listener @returns {() => void} call it to be told no more */
  listen(listener) {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /**
   * Goes on with another flock.
   * @param {string} text @param {string} name @param {{ saved: boolean, today?: string }} how saved: the text stands in a file somewhere
   */
  async open(text, name, { saved, today }) {
    await this.settle();
    if (today) this.today = today;
    this.flock = { text, name, today: this.today };
    this.reading = await this.engine.read(this.flock);
    this.saved = saved ? text : null;
    this.#undo = [];
    this.newest = await lookForPack(name);
    this.refused.clear();
    store.take(name);
    this.#keep();
    this.#tell();
  }

  /** The flock with all that has been typed so far, and today as it was last said. @returns {Promise<{ text: string, name: string, today: string }>} */
  async current() {
    await this.settle();
    if (!this.flock) throw new Trouble('open a flock first');
    return this.flock;
  }

  /**
   * What somebody is typing into a field: it is in the text after a moment without a key. An item past the end of its list is added to it.
   * @param {Path} path @param {Value} value @param {Edit[]} also edits that go with it
   */
  type(path, value, also = []) {
    this.#typed.set(JSON.stringify(path), { path, value, also });
    clearTimeout(this.#typing);
    // Whoever stopped the engine meanwhile loses nothing: what was typed waits for the next time.
    this.#typing = setTimeout(() => this.settle().catch(() => {}), typingPause);
  }

  /** Whether a field is ahead of the text. @param {Path} path */
  isTyping(path) { return this.#typed.has(JSON.stringify(path)); }

  /** Fulfilled when all that was typed so far is in the text. */
  async settle() {
    clearTimeout(this.#typing);
    if (this.#typed.size > 0) {
      await this.#next(async () => {
        for (const [key, typed] of [...this.#typed.entries()]) {
          const refused = await this.#make([...typed.also, ...editsOf(typed.path, typed.value, this.reading?.values)], key);
          if (refused.length > 0) this.refused.set(key, refused);
          else this.refused.delete(key);
          if (this.#typed.get(key) === typed) this.#typed.delete(key);
        }
      });
    }
    await this.#queue;
  }

  /** @param {string} today */
  async setToday(today) {
    await this.settle();
    return this.#next(async () => {
      this.today = today;
      if (!this.flock) return;
      const flock = { ...this.flock, today };
      this.reading = await this.engine.read(flock);
      this.flock = flock;
    });
  }

  /** Makes edits of the form, all or none. @param {Edit[]} edits @returns {Promise<import('#page/engine.js').Found[]>} why they were not made; empty where they were */
  async edit(edits) {
    await this.settle();
    return this.#next(async () => this.#make(edits, null));
  }

  /** The whole text, as typed or as the engine made it. @param {string} text */
  async setText(text) {
    await this.settle();
    return this.#next(async () => {
      if (!this.flock) return;
      this.#become(text, await this.engine.read({ ...this.flock, text }), null);
    });
  }

  async undo() {
    await this.settle();
    return this.#next(async () => {
      const before = this.#undo.pop();
      if (before === undefined || !this.flock) return;
      this.refused.clear();
      this.flock = { ...this.flock, text: before.text };
      this.reading = await this.engine.read(this.flock);
      this.#keep();
    });
  }

  /** The text stands in a file now. @param {string} name of the file */
  markSaved(name) {
    if (!this.flock) return;
    if (name !== this.flock.name) {
      // What was kept under the old name is in this file now.
      if (this.keeping === 'kept') store.forget(this.flock.name);
      store.take(name);
      if (this.newest) void keepPack(name, this.newest);
    }
    this.flock = { ...this.flock, name };
    this.saved = this.flock.text;
    this.#keep();
    this.#tell();
  }

  /** @param {import('#page/engine.js').Earlier} newest */
  setNewest(newest) {
    this.newest = newest;
    if (this.flock) void keepPack(this.flock.name, newest);
    this.#tell();
  }

  /** Another window has kept this flock since: from now on this one keeps it under another name. */
  keepApart() {
    if (!this.flock) return;
    this.flock = { ...this.flock, name: store.freeName(this.flock.name) };
    this.#keep();
    this.#tell();
  }

  /** @param {Edit[]} edits @param {string | null} typedAt */
  async #make(edits, typedAt) {
    if (!this.flock) return [];
    const now = await this.engine.apply(this.flock, edits);
    if (now.refused.length === 0) this.#become(now.text, now, typedAt);
    return now.refused;
  }

  /** @param {string} text @param {Reading} reading @param {string | null} typedAt the field it was typed into */
  #become(text, reading, typedAt) {
    if (!this.flock || text === this.flock.text) return;
    const isMore = typedAt !== null && this.#undo.at(-1)?.typedAt === typedAt;
    if (!isMore) this.#undo = [...this.#undo, { text: this.flock.text, typedAt }].slice(-mostUndo);
    this.flock = { ...this.flock, text };
    this.reading = reading.planned ? reading : { ...reading, pack: this.reading?.pack ?? null };
    this.#keep();
    clearTimeout(this.#planning);
    if (!reading.planned) this.#planning = setTimeout(() => this.#plan(), planningPause);
  }

  /** Looks for what only the plan can warn of, unless something has been typed since. */
  async #plan() {
    const { flock } = this;
    if (!flock || this.#typed.size > 0) return;
    const reading = await this.engine.read(flock).catch(() => null);
    if (reading === null || this.flock !== flock) return;
    this.reading = reading;
    this.#tell();
  }

  #keep() {
    if (this.flock) this.keeping = store.keep(this.flock.name, this.flock.text, this.reading?.holding ?? this.flock.name, !this.isUnsaved);
  }

  #tell() { for (const listener of [...this.#listeners]) listener(); }

  /** @template T @param {() => Promise<T>} step @returns {Promise<T>} */
  #next(step) {
    const done = this.#queue.then(step);
    this.#queue = done.catch(() => { /* told to whoever asked for the step */ });
    return done.finally(() => this.#tell());
  }
}

/**
 * What was typed into a field as edits of the file: of an item that is not there yet, all of it is added.
 * @param {Path} path @param {Value} value @param {Value | undefined} values what the file says @returns {Edit[]}
 */
function editsOf(path, value, values) {
  const fresh = path.findIndex((step, i) => typeof step === 'number' && step >= listAt(values, path.slice(0, i)).length);
  if (fresh < 0) return [{ path, set: value }];
  if (value === '') return [];
  /** @type {Value} */
  let item = value;
  for (const step of path.slice(fresh + 1).reverse()) item = typeof step === 'number' ? [item] : { [step]: item };
  return [{ path: path.slice(0, fresh), add: [item] }];
}
