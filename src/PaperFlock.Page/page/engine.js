// The one way from the page to the engine: every call, what it takes and what it answers. See Engine.cs, and PaperFlock.Packs/Screen for what each means.
// Days are texts such as 2026-11-25; `words` beside them are for people. An answer with `trouble` is a sentence for the keeper, and nothing else.

/**
 * The open flock, as most calls want it.
 * @typedef {{ text: string, name: string, today: string }} Flock
 * @typedef {(string | number)[]} Path keys as texts, items of lists as numbers from 0
 * @typedef {{ severity: 'error' | 'warning', code: string, line: number, column: number, length: number, message: string, advice: string, path: Path }} Found
 * @typedef {{ [key: string]: Value }} Section
 * @typedef {string | null | Section | any[]} Value as written; null where nothing is. A list holds values
 * @typedef {object} Reading what a flock file says, and what is wrong with it
 * @property {boolean} ok no errors: it can be planned
 * @property {boolean} planned whether it has been, so that what is found has the warnings of the plan too
 * @property {Found[]} found in the order of the file
 * @property {Value} values null where the file is no YAML
 * @property {Record<string, string>} days every date the file says, in words
 * @property {string} today in words
 * @property {string | null} holding
 * @property {number | null} ewes
 * @property {string | null} pack such as HB-2027
 * @typedef {{ path: Path, set?: Value, add?: Value[], remove?: true }} Edit see FormEdits.cs
 * @typedef {{ kind: string, longest?: number, runsOn?: boolean, whole?: boolean, least?: string, most?: string | number, units?: string[], words?: string[], item?: Form, fewest?: number, path?: string, one?: Form, other?: Form }} Form
 * @typedef {{ name: string, form: Form, required: boolean, help: string, default: string | null, example: string | null }} Key
 * @typedef {{ form: Record<string, { keys: Key[], exactlyOneOf: string[] }>, sheets: { kind: string, code: string, purpose: string }[], mostBytes: number, mostPdfBytes: number, tagLine: string }} Description
 * @typedef {{ iso: string, words: string }} Day
 * @typedef {{ day?: Day, either?: Day[] }} DayRead neither: it is no date
 * @typedef {{ latitude?: string, longitude?: string, grid?: string | null, zone?: string, words?: string, wrong?: string }} PlaceRead
 * @typedef {{ day: string, past: boolean, title: string, group: string | null, window: string, why: string, trouble: string | null }} Job
 * @typedef {{ from: string, jobs: number[], rounds: number | null }} Week the first day of it, which jobs, and the most rounds on a day
 * @typedef {{ ewe: number, called: string, tag: string, lambs: number, standing: string, likely: string | null, between: string | null, dated: string | null }} Due
 * @typedef {{ item: string, buy: string | null, kg: number | null, orderBy: string | null, overdue: boolean, neededFrom: string, basis: string }} Store
 * @typedef {{ code: string, who: string, ewes: string[], steps: { from: string, each: string | null, at: string, past: boolean }[] }} Feed
 * @typedef {{ from: string, to: string, words: string, sitter: string | null, over: boolean }} Away
 * @typedef {{ summary: string, lambing: string, housing: string, jobs: Job[], weeks: Week[], gatherings: { day: string, jobs: string }[], due: Due[], feed: Feed[], stores: Store[], away: Away[] }} Plan
 * @typedef {{ title: string, lines: { label: string, text: string }[] }} Why
 * @typedef {{ teeth: number[], marks: { group: string, tup: string | null, with: string, ewes: number[] }[], scan: number[], losses: number[], care: string, lambed: { ewe: number, likely: string }[] }} Season ewes by their place in values.ewes, in the order of the paper
 * @typedef {{ text: string, face: number, size: number, x: number, y: number, turns: number } | { d: string, fill: string, stroke: number, round: boolean }} Drawn
 * @typedef {{ label: string, title: string, width: number, height: number, drawn: Drawn[] }} Picture
 * @typedef {{ rows: string[][], of: number, columns: number, keys: (string | null)[], hasHeading: boolean, ask: boolean, taken: number, refused: number, found: Found[], text: string | null }} Pasted
 * @typedef {{ text?: string, name?: string, assumed?: string[], wrong?: { field: string, message: string }[] }} Begun
 * @typedef {{ text?: string, name?: string, summary?: string, said?: { heading: string, lines: string[] }[], wrong?: string }} Next the season after, or what is wrong with its day
 * @typedef {{ name?: string, keeper?: string, place?: string, zone?: string, tupIn?: string, lambingFrom?: string, ewes?: string, paper?: string }} Answers
 * @typedef {{ number: number, day: string, what: string, known: boolean, filed: boolean }} Issue
 * @typedef {{ sheets?: string | null, from?: string | null, to?: string | null, draft?: boolean, changed?: boolean, since?: number | null }} PackOptions see ScreenPack.cs
 * @typedef {{ file: string, size: string, pages: number, howTo: string[], pdf: Uint8Array }} MadeDocument
 * @typedef {{ name: string, bytes: Uint8Array }} Earlier a PDF somebody chose, and what it is called
 * @typedef {{ documents: MadeDocument[], said: string[], nothing: boolean }} Made
 * @typedef {(share: number, doing: string) => void} Progress share from 0 to 1
 */

/** What cannot be had, in a sentence for the keeper. */
export class Trouble extends Error {}

/** The work was stopped by whoever waited for it. */
export class Stopped extends Error {}

export class Engine {
  /** @type {Worker} */
  #worker;
  /** @type {Map<number, { resolve: (answer: any) => void, reject: (fault: Error) => void, tell?: (done: number, of: number, sheet: string) => void }>} */
  #waiting = new Map();
  #last = 0;
  #parts;
  #source;

  /**
   * @param {Blob} parts of the engine, as the page has them; a blob is kept once, by the browser, however many workers are begun with it
   * @param {string} source of the worker
   */
  constructor(parts, source) {
    this.#parts = parts;
    this.#source = source;
    this.#worker = this.#begin();
  }

  /** Fulfilled when the engine answers. @type {Promise<void>} */
  ready = Promise.resolve();

  /** Ends whatever is being worked out, and begins afresh. */
  stop() {
    this.#worker.terminate();
    const waiting = [...this.#waiting.values()];
    this.#waiting.clear();
    for (const { reject } of waiting) reject(new Stopped('stopped'));
    this.#worker = this.#begin();
  }

  /** Whether nobody waits for an answer. */
  get isIdle() { return this.#waiting.size === 0; }

  /** @returns {Promise<Description>} */
  describe() { return this.#ask('Describe'); }

  /** @returns {Promise<Flock>} */
  sample() { return this.#ask('Sample'); }

  /**
   * A file somebody chose. Its text is null where it is none to go on with, and why is in `found`.
   * @param {Uint8Array} bytes @param {string} name @param {string} today
   * @returns {Promise<Reading & { text: string | null }>}
   */
  open(bytes, name, today) { return this.#ask('Open', bytes, name, today); }

  /** @param {Flock} flock @returns {Promise<Reading>} */
  read(flock) { return this.#ask('Read', flock.text, flock.name, flock.today); }

  /** All edits or none; the answer is quick, and of a flock that is not planned. @param {Flock} flock @param {Edit[]} edits @returns {Promise<Reading & { text: string, refused: Found[] }>} */
  apply(flock, edits) { return this.#ask('Apply', flock.text, flock.name, flock.today, JSON.stringify(edits)); }

  /** What somebody typed as a date. @param {string} typed @param {string} today @returns {Promise<DayRead>} */
  readDay(typed, today) { return this.#ask('ReadDay', typed, today); }

  /** @param {Answers} answers @param {string} today @returns {Promise<Begun>} */
  begin(answers, today) { return this.#ask('Begin', JSON.stringify(answers), today); }

  /** The season after that of the flock. @param {Flock} flock @param {string} tupIn as typed; empty for the same day of the week a year on @returns {Promise<Next>} */
  nextSeason(flock, tupIn) { return this.#ask('NextSeason', flock.text, flock.name, flock.today, tupIn); }

  /** @param {Flock} flock @param {string} pasted @param {number} tagColumn from 0; -1 to find it by its heading @param {number} nameColumn as tagColumn @returns {Promise<Pasted>} */
  paste(flock, pasted, tagColumn = -1, nameColumn = -1) { return this.#ask('Paste', flock.text, flock.name, pasted, tagColumn, nameColumn); }

  /** A list that a spreadsheet saved, to go on with as if it had been pasted. @param {Uint8Array} bytes @param {string} name @returns {Promise<{ text: string }>} */
  openList(bytes, name) { return this.#ask('OpenList', bytes, name); }

  /** So many ewes with a line for the tag, in place of those in the flock. @param {Flock} flock @param {string} ewes @returns {Promise<{ text: string }>} */
  number(flock, ewes) { return this.#ask('Number', flock.text, flock.name, ewes); }

  /** What somebody typed as a place. @param {string} typed @param {string} today @returns {Promise<PlaceRead>} */
  readPlace(typed, today) { return this.#ask('ReadPlace', typed, today); }

  /** @param {Flock} flock @returns {Promise<Plan>} */
  plan(flock) { return this.#ask('Plan', flock.text, flock.name, flock.today); }

  /** @param {Flock} flock @param {number} job of the plan @returns {Promise<Why>} */
  whyJob(flock, job) { return this.#ask('WhyJob', flock.text, flock.name, flock.today, job); }

  /** @param {Flock} flock @param {number} ewe of the file @returns {Promise<Why>} */
  whyEwe(flock, ewe) { return this.#ask('WhyEwe', flock.text, flock.name, flock.today, ewe); }

  /** @param {Flock} flock @returns {Promise<Season>} */
  season(flock) { return this.#ask('Season', flock.text, flock.name, flock.today); }

  /** @param {Flock} flock @param {string} sheets by kind or code, with blanks between @returns {Promise<Picture[]>} */
  pictures(flock, sheets) { return this.#ask('Pictures', flock.text, flock.name, flock.today, sheets); }

  /** @param {Flock} flock @returns {Promise<{ text: string, file: string }>} */
  calendar(flock) { return this.#ask('Calendar', flock.text, flock.name, flock.today); }

  /** The lambs born, for the flock book. @param {Flock} flock @returns {Promise<{ text: string, file: string }>} */
  births(flock) { return this.#ask('Births', flock.text, flock.name, flock.today); }

  /** The issues a PDF knows, the newest first. @param {Flock} flock @param {Earlier} earlier @returns {Promise<{ issues: Issue[] }>} */
  issues(flock, earlier) { return this.#ask('Issues', flock.text, flock.name, flock.today, earlier.bytes, earlier.name); }

  /**
   * The next issue of the pack, some of its sheets, or a draft.
   * @param {Flock} flock @param {PackOptions} options
   * @param {Earlier | null} earlier the PDF of the newest issue
   * @param {Progress} progress
   * @returns {Promise<Made>}
   */
  async pack(flock, options, earlier, progress) {
    progress(0, 'Working out the sheets');
    return this.#printed(this.#work(
      (done, of, sheet) => progress(done / of / 2, `Laying out ${sheet}`),
      'Pack', flock.text, flock.name, flock.today, JSON.stringify(options), earlier?.bytes ?? new Uint8Array(), earlier?.name ?? ''), progress);
  }

  /** The printer's test page, or the leaf that says how to use a pack. @param {boolean} isTest @param {boolean} isLetter @param {Progress} progress @returns {Promise<Made>} */
  async leaf(isTest, isLetter, progress) { return this.#printed(this.#ask('Leaf', isTest, isLetter), progress); }

  /** @param {Promise<Made>} asked @param {Progress} progress @returns {Promise<Made>} */
  async #printed(asked, progress) {
    const made = await asked;
    for (const [i, document] of made.documents.entries()) {
      document.pdf = await this.#work((done, of) => progress((1 + (i + done / of) / made.documents.length) / 2, `Printing page ${done} of ${of}`), 'Pdf', i);
    }
    return made;
  }

  /** @param {string} call @param {...unknown} args */
  #ask(call, ...args) { return this.#work(undefined, call, ...args); }

  /** @param {undefined | ((done: number, of: number, sheet: string) => void)} tell how far it is @param {string} call @param {...unknown} args */
  async #work(tell, call, ...args) {
    await this.ready;
    const answer = await this.#post({ call, with: args }, tell);
    if (typeof answer !== 'string') return answer;
    const told = JSON.parse(answer);
    if (told.trouble) throw new Trouble(told.trouble);
    return told;
  }

  /** @param {object} message @param {(done: number, of: number, sheet: string) => void} [tell] @returns {Promise<any>} */
  #post(message, tell) {
    return new Promise((resolve, reject) => {
      this.#waiting.set(++this.#last, { resolve, reject, tell });
      this.#worker.postMessage({ id: this.#last, ...message });
    });
  }

  #begin() {
    const worker = new Worker(URL.createObjectURL(new Blob([this.#source], { type: 'text/javascript' })));
    worker.addEventListener('message', ({ data }) => {
      const waiting = this.#waiting.get(data.id);
      if (data.progress) return waiting?.tell?.(.../** @type {[number, number, string]} */ (data.progress));
      this.#waiting.delete(data.id);
      if (data.fault) waiting?.reject(new Error(data.fault));
      else waiting?.resolve(data.answer);
    });
    worker.addEventListener('error', event => {
      for (const { reject } of this.#waiting.values()) reject(new Error(event.message));
      this.#waiting.clear();
    });
    this.#worker = worker;
    this.ready = this.#post({ parts: this.#parts });
    this.ready.catch(() => { /* told by the first call, or to whoever waits for it */ });
    return worker;
  }
}
