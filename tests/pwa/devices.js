/**
 * The phones of a history: the page's own store, each on a disk in memory, told what to do by lines
 * of JSON. What they ask of the computer goes out as a line and comes back as one.
 */
import { createInterface } from 'node:readline';
import { makeCore } from '../../pwa/store/core.js';
import { makeStore } from '../../pwa/store/store.js';
import { Disk } from './memory_database.js';

const phones = new Map();
const asked = new Map();
let serial = 0;

const say = (message) => process.stdout.write(`${JSON.stringify(message)}\n`);

function signal(value) {
  return { value, peek: () => value, subscribe: () => () => undefined };
}

/** A request leaves this process; the history decides what becomes of it. */
function fetchFor(phone) {
  const { page } = phone;
  return async (url, { method, body, headers }) => {
    if (phone.page !== page) return new Promise(() => undefined);
    const bytes = body === null ? null : Buffer.from(await new Response(body).arrayBuffer());
    serial += 1;
    const id = serial;
    say({
      ask: id,
      phone: phone.name,
      method,
      path: url,
      headers: Object.fromEntries(headers),
      body: bytes?.toString('base64') ?? null,
    });
    const answer = await new Promise((resolve) => asked.set(id, resolve));
    // A page that was killed meanwhile hears nothing any more.
    if (phone.page !== page) return new Promise(() => undefined);
    if (answer.lost) throw new TypeError('the line broke');
    return new Response(Buffer.from(answer.body, 'base64'), answer);
  };
}

let rolled = 1;
function random(count) {
  return Uint8Array.from({ length: count }, () => {
    rolled = (Math.imul(rolled, 1664525) + 1013904223) >>> 0;
    return rolled >>> 24;
  });
}

function worldOf(phone) {
  const { page } = phone;
  return {
    database: async (name) => {
      if (phone.page !== page) throw new DOMException('the page is gone', 'InvalidStateError');
      phone.connection = phone.disk.connect(name);
      return phone.connection;
    },
    now: () => phone.clock,
    random,
    fetch: fetchFor(phone),
    made: (ms) => new Date(ms).toISOString(),
    signal,
    lock: async (_name, work) => {
      await work();
      return true;
    },
    channel: () => ({ post: () => undefined, close: () => undefined }),
    storage: async () => ({ persisted: true, usage: 0, quota: 1 }),
    persist: async () => true,
    report: (error) => {
      if (phone.page === page) say({ unhandled: String(error?.stack ?? error) });
    },
  };
}

async function begin(phone) {
  phone.page = {};
  phone.core = makeCore(worldOf(phone), 'witnessmark');
  const means = {
    directory: null,
    arm: () => () => undefined,
    chance: () => 0,
    wakeLater: async () => undefined,
  };
  phone.store = await makeStore(phone.core, means);
  // A history says itself when a phone syncs.
  phone.core.poke = () => undefined;
}

const all = (phone, table) => {
  const rows = [...phone.disk.tables[table]].sort(([a], [b]) => (a < b ? -1 : 1));
  return structuredClone(rows.map(([, row]) => row));
};

const DOES = {
  seed: ({ seed }) => {
    rolled = seed;
    phones.clear();
  },
  phone: async ({ name, clock }) => {
    const phone = { name, clock, disk: new Disk() };
    phones.set(name, phone);
    await begin(phone);
  },
  copy: async ({ name, of }) => {
    const { clock, disk } = phones.get(of);
    const phone = { name, clock, disk: disk.copied() };
    phones.set(name, phone);
    await begin(phone);
  },
  clock: ({ name, clock }) => {
    phones.get(name).clock = clock;
  },
  pair: ({ name, code }) => phones.get(name).store.pair({ code, name }),
  keep: ({ name, drafts }) => phones.get(name).store.keep(drafts),
  takeIn: ({ name, entries }) => phones.get(name).store.takeIn(entries),
  sync: ({ name }) => phones.get(name).store.syncNow(),
  kill: async ({ name, flat }) => {
    const phone = phones.get(name);
    phone.page = {};
    if (flat) phone.disk.flat(phone.connection);
    else phone.disk.kill(phone.connection);
    await begin(phone);
  },
  giveUp: ({ name, entry, reason }) => phones.get(name).store.giveUp(entry, reason),
  repair: ({ name, entry, draft }) => phones.get(name).store.repair(entry, draft),
  refused: ({ name }) => phones.get(name).store.refused(),
  saved: async ({ name }) => {
    const blob = await phones.get(name).store.saveToFile();
    return Buffer.from(await blob.arrayBuffer()).toString('base64');
  },
  look: async ({ name }) => {
    const phone = phones.get(name);
    const { paired, agreed } = phone.core.state;
    return {
      paired: paired.value,
      agreed: agreed.value,
      sync: phone.disk.tables.meta.get('sync'),
      device: phone.disk.tables.meta.get('clock').device,
      entries: all(phone, 'entry'),
      subjects: all(phone, 'subject').map(({ value }) => value),
      waiting: all(phone, 'outbox').map(({ id }) => id),
      refused: all(phone, 'refused'),
      dirty: all(phone, 'dirty').length,
    };
  },
};

async function obey({ id, does, ...facts }) {
  try {
    say({ id, gives: (await DOES[does](facts)) ?? null });
  } catch (error) {
    say({ id, fault: { code: error.code ?? null, says: error.stack } });
  }
}

process.on('unhandledRejection', (error) => say({ unhandled: String(error?.stack ?? error) }));

for await (const line of createInterface({ input: process.stdin })) {
  const message = JSON.parse(line);
  if ('answers' in message) {
    asked.get(message.answers)(message);
    asked.delete(message.answers);
  } else obey(message);
}
