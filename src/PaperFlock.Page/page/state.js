// The open flock: its text, what the engine says of it, and the way back. Views read it, change it through its methods, and are told when it has changed.
import { Trouble } from '#page/engine.js';
import * as store from '#page/store.js';

/** @typedef {import('#page/engine.js').Engine} Engine */
/** @typedef {import('#page/engine.js').Reading} Reading */
/** @typedef {import('#page/engine.js').Edit} Edit */

/** Steps that can be undone. */
const mostUndo = 200;

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
  /** The day that counts as today; the page asks for it. */
  today = clockDay();
  /** @type {string[]} */
  #undo = [];
  /** @type {Set<() => void>} */
  #listeners = new Set();
  /** Edits follow one another, each made in what the one before it left. @type {Promise<unknown>} */
  #queue = Promise.resolve();

  /** @param {Engine} engine */
  constructor(engine) { this.engine = engine; }

  get isUnsaved() { return this.flock !== null && this.flock.text !== this.saved; }
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
    await this.#queue;
    if (today) this.today = today;
    this.flock = { text, name, today: this.today };
    this.reading = await this.engine.read(this.flock);
    this.saved = saved ? text : null;
    this.#undo = [];
    store.take(name);
    this.#keep();
    this.#tell();
  }

  /** The flock with all that has been typed so far, and today as it was last said. @returns {Promise<{ text: string, name: string, today: string }>} */
  async current() {
    await this.#queue;
    if (!this.flock) throw new Trouble('open a flock first');
    return this.flock;
  }

  /** @param {string} today */
  setToday(today) {
    return this.#next(async () => {
      this.today = today;
      if (!this.flock) return;
      const flock = { ...this.flock, today };
      this.reading = await this.engine.read(flock);
      this.flock = flock;
    });
  }

  /** Makes edits of the form, all or none. @param {Edit[]} edits @returns {Promise<import('#page/engine.js').Found[]>} why they were not made; empty where they were */
  edit(edits) {
    return this.#next(async () => {
      if (!this.flock) return [];
      const now = await this.engine.apply(this.flock, edits);
      if (now.refused.length === 0) this.#become(now.text, now);
      return now.refused;
    });
  }

  /** The whole text, as typed or as the engine made it. @param {string} text */
  setText(text) {
    return this.#next(async () => {
      if (!this.flock) return;
      this.#become(text, await this.engine.read({ ...this.flock, text }));
    });
  }

  undo() {
    return this.#next(async () => {
      const before = this.#undo.pop();
      if (before === undefined || !this.flock) return;
      this.flock = { ...this.flock, text: before };
      this.reading = await this.engine.read(this.flock);
      this.#keep();
    });
  }

  /** The text stands in a file now. @param {string} name of the file */
  markSaved(name) {
    if (!this.flock) return;
    if (name !== this.flock.name) store.take(name);
    this.flock = { ...this.flock, name };
    this.saved = this.flock.text;
    this.#keep();
    this.#tell();
  }

  /** Another window has kept this flock since: from now on this one keeps it under another name. */
  keepApart() {
    if (!this.flock) return;
    this.flock = { ...this.flock, name: store.freeName(this.flock.name) };
    this.#keep();
    this.#tell();
  }

  /** @param {string} text @param {Reading} reading */
  #become(text, reading) {
    if (!this.flock || text === this.flock.text) return;
    this.#undo = [...this.#undo, this.flock.text].slice(-mostUndo);
    this.flock = { ...this.flock, text };
    this.reading = reading;
    this.#keep();
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
