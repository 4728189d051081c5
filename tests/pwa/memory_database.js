/**
 * A database in memory that answers the few calls the store makes of IndexedDB, so that thousands
 * of histories run in one process. Writes are done one transaction after another; a flat battery
 * takes back what was written with relaxed durability since the last strict write.
 */
import { TABLES } from '../../pwa/store/schema.js';

globalThis.IDBKeyRange = { lowerBound: (lower, open) => ({ lower, open }) };

const inRange = (key, query) => {
  if (query === undefined || query === null) return true;
  if (typeof query !== 'object') return key === query;
  return query.open ? key > query.lower : key >= query.lower;
};

const copy = (value) => (value === undefined ? undefined : structuredClone(value));

class Table {
  constructor(tx, name, rows) {
    Object.assign(this, { tx, name, rows });
  }

  async keys(query, count) {
    await this.tx.turn;
    const found = [...this.rows.keys()].filter((key) => inRange(key, query)).sort();
    return found.slice(0, count);
  }

  async get(key) {
    await this.tx.turn;
    return copy(this.rows.get(key));
  }

  async getAll(query, count) {
    return (await this.keys(query, count)).map((key) => copy(this.rows.get(key)));
  }

  getAllKeys(query, count) {
    return this.keys(query, count);
  }

  async count(query) {
    return (await this.keys(query)).length;
  }

  async put(value, key) {
    const held = copy(value);
    await this.tx.turn;
    this.tx.set(this.name, key ?? held[TABLES[this.name].key], held);
  }

  async delete(key) {
    await this.tx.turn;
    this.tx.set(this.name, key, undefined);
  }

  index(name) {
    const { path, many } = TABLES[this.name].indexes[name];
    const fits = (row, query) =>
      (many ? row[path] : [row[path]]).some(
        (value) => value !== undefined && inRange(value, query),
      );
    const rows = async (query) => {
      await this.tx.turn;
      return [...this.rows]
        .filter(([, row]) => fits(row, query))
        .sort(([a], [b]) => (a < b ? -1 : 1));
    };
    return {
      getAll: async (query, count) =>
        (await rows(query)).slice(0, count).map(([, row]) => copy(row)),
      getAllKeys: async (query, count) => (await rows(query)).slice(0, count).map(([key]) => key),
      count: async (query) => (await rows(query)).length,
    };
  }
}

class Transaction {
  constructor(disk, mode, durability) {
    Object.assign(this, { disk, journal: [], closed: false });
    this.turn = disk.last;
    if (mode === 'readonly') return;
    this.strict = durability === 'strict';
    disk.last = new Promise((finish) => {
      this.finish = finish;
    });
  }

  objectStore(name) {
    return new Table(this, name, this.disk.tables[name]);
  }

  set(table, key, value) {
    if (this.closed) throw new DOMException('the transaction is closed', 'InvalidStateError');
    const rows = this.disk.tables[table];
    this.journal.push([table, key, rows.get(key)]);
    if (value === undefined) rows.delete(key);
    else rows.set(key, value);
  }

  get done() {
    return new Promise((resolve, reject) => {
      setImmediate(() => {
        if (this.closed) reject(new DOMException('aborted', 'AbortError'));
        else this.keep();
        resolve();
      });
    });
  }

  keep() {
    this.closed = true;
    this.disk.relaxed.push(...this.journal);
    if (this.strict) this.disk.relaxed = [];
    this.finish?.();
  }

  abort() {
    if (this.closed) throw new DOMException('already finished', 'InvalidStateError');
    this.closed = true;
    this.disk.undo(this.journal);
    this.finish?.();
  }
}

/** One device's disk; it outlives the pages that open it. */
export class Disk {
  constructor() {
    this.tables = Object.fromEntries(Object.keys(TABLES).map((name) => [name, new Map()]));
    this.relaxed = [];
    this.last = Promise.resolve();
    this.open = new Set();
  }

  undo(journal) {
    for (const [table, key, value] of [...journal].reverse()) {
      if (value === undefined) this.tables[table].delete(key);
      else this.tables[table].set(key, value);
    }
  }

  connect(name) {
    const connection = { name, gone: false, close: () => undefined };
    connection.transaction = (_names, mode, options = {}) => {
      if (connection.gone) throw new DOMException('the page is gone', 'InvalidStateError');
      const tx = new Transaction(this, mode, options.durability);
      if (mode === 'readwrite') this.open.add(tx);
      return tx;
    };
    return connection;
  }

  /** The page is killed: what was not committed is undone. */
  kill(connection) {
    connection.gone = true;
    for (const tx of this.open) if (!tx.closed) tx.abort();
    this.open.clear();
    this.last = Promise.resolve();
  }

  /** The battery is flat: relaxed writes since the last strict one are lost too. */
  flat(connection) {
    this.kill(connection);
    this.undo(this.relaxed);
    this.relaxed = [];
  }

  /** A second phone begins as a copy of this one's storage. */
  copied() {
    const twin = new Disk();
    for (const [name, rows] of Object.entries(this.tables))
      twin.tables[name] = structuredClone(rows);
    return twin;
  }
}
