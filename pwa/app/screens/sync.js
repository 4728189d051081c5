/** Sync: what waits, what was refused, when was last contact, is this device ready for the garage. */
import { useEffect, useState } from 'preact/hooks';
import { takeUpdate } from '../../store/update.js';
import { daysSince, when } from '../dates.js';
import { Contact } from '../frame/contact.js';
import {
  Act,
  Dock,
  html,
  Icon,
  Key,
  Page,
  say,
  useAnswer,
  useStore,
  Wait,
} from '../frame/index.js';
import { placeTitle, refusedRows } from '../frame/refused_pull.js';
import { Row } from '../frame/row.js';
import { saveFile } from '../frame/save_file.js';
import { t } from '../texts/index.js';
import { capital } from '../words.js';

/** Days without contact, and waiting entries, from which they are said aloud. */
const LONG = { days: 7, waiting: 200 };
const LITTLE_ROOM = 100_000_000;

/** @param {{icon: string, figure: any, name: string, says?: string}} props */
const Count = ({ icon, figure, name, says }) =>
  html`<li class="count-line"><${Icon} name=${icon} /><span><b>${name}</b>${says && html`<span class="soft">${says}</span>`}</span><span class="fig">${figure}</span></li>`;

/** What is ready may still be on its way: the page's files are fetched after the first visit. */
const LOOK_AGAIN = 2000;

/** @param {Record<string, boolean>} first @returns {Record<string, boolean>} */
function useReady(first) {
  const store = useStore();
  const [value, setValue] = useState(first);
  const whole = Object.values(value).every(Boolean);
  useEffect(() => setValue(first), [first]);
  useEffect(() => {
    if (whole) return;
    const timer = setInterval(async () => setValue(await store.ready()), LOOK_AGAIN);
    return () => clearInterval(timer);
  }, [whole]);
  return value;
}

/** What is on this device for an evening without network. @param {{first: Record<string, boolean>}} props */
function Ready({ first }) {
  const value = useReady(first);
  const lacks = Object.keys(value).filter((name) => !value[name]);
  const whole = lacks.length === 0;
  return html`<div class="tell"><p><b>${t(whole ? 'sync.ready' : 'sync.not-ready')}</b></p>
    <p>${whole ? t('sync.ready.says') : t('sync.lacks', { what: lacks.map((name) => t(`sync.lacks.${name}`)).join(', ') })}</p></div>`;
}

/** @param {{says: string, then?: string}} props */
const Notice = ({ says, then }) =>
  html`<p class="caution notice"><span><b>${says}</b> ${then}</span></p>`;

/** Everything that should be known before the next evening. */
function Notices() {
  const { state } = useStore();
  const days = daysSince(state.lastContact.value);
  const waiting = Number(state.waiting.value);
  const kept = state.storage.value;
  const low = kept?.quota > 0 && kept.quota - kept.usage < LITTLE_ROOM;
  return html`${days !== null && days >= LONG.days && html`<${Notice} says=${t('sync.contact.old', { n: days })} />`}
    ${waiting > LONG.waiting && html`<${Notice} says=${t('sync.many', { n: waiting })} />`}
    ${kept && !kept.persisted && html`<${Notice} says=${t('sync.storage')} then=${t('sync.storage.then')} />`}
    ${low && html`<${Notice} says=${t('sync.low')} then=${t('sync.low.then')} />`}`;
}

/** @param {{rows: any[]}} props */
function Refused({ rows }) {
  if (rows.length === 0) return null;
  return html`<div class="sect"><h2>${t('sync.refused')}</h2><span class="soft">${rows.length}</span></div><p class="soft">${t('sync.refused.says')}</p>
    <ul class="sheet also">${rows.map((row) => html`<${RefusedRow} key=${row.id} row=${row} />`)}</ul>`;
}

/** Counts and the last contact. */
function Counts() {
  const { state } = useStore();
  const contact = state.lastContact.value;
  const photos = Number(state.photosWaiting.value);
  const waiting = Number(state.waiting.value);
  const agreed = state.agreed.value;
  return html`<ul class="sheet"><${Count} icon="i-wait" figure="" name=${t('sync.waiting', { n: waiting })} says=${state.paired.value === 'yes' || waiting ? t('sync.waiting.says', { n: waiting }) : ''} />
    ${photos > 0 && html`<${Count} icon="i-photo" figure="" name=${t('sync.photos', { n: photos })} />`}
    <${Count} icon="i-device" figure="" name=${t('sync.contact')} says=${contact ? when(contact) : t('sync.contact.never')} />
    <${Count} icon=${agreed ? 'i-home' : 'i-find'} figure="" name=${agreed ? t(waiting ? 'sync.agreed.then' : 'sync.agreed', { n: Number(agreed) }) : t('sync.not-agreed')} /></ul>`;
}

/** @param {{state: any, onSend: () => Promise<unknown>}} props */
function Main({ state, onSend }) {
  const { syncing, progress, waiting, paired } = state;
  if (paired.value !== 'yes')
    return html`<${Dock}><${Act} href="/pair" label=${t('sync.pair')} second=${t('sync.pair.second')} /></${Dock}>`;
  const far = progress.value
    ? t('sync.going.far', { done: progress.value.done, of: progress.value.of })
    : '';
  const going = syncing.value ? t('sync.going') : '';
  if (!Number(waiting.value) && !far)
    return html`<${Dock}><${Key} label=${t('sync.fetch')} onPress=${onSend} /></${Dock}>`;
  const second = going ? far : t('sync.now.second', { n: Number(waiting.value) });
  return html`<${Dock}><${Act} label=${going || t('sync.now')} second=${second} onPress=${onSend} /></${Dock}>`;
}

/** @param {{state: any}} props */
function Apart({ state }) {
  const paired = state.paired.value;
  if (paired === 'yes') return null;
  const key = paired === 'no' ? 'sync.apart' : 'sync.revoked';
  return html`<div class="tell"><p><b>${t(key)}</b></p><p>${t(`${key}.then`)}</p></div>`;
}

/** A newer page waits; it takes over when the person says so. */
function Newer() {
  const { state } = useStore();
  if (!state.update.value) return null;
  const take = async () => {
    const how = await takeUpdate();
    if (how === 'unsaved') say(t('update.unsaved'));
  };
  return html`<${Notice} says=${t('update')} then=${t('update.then')} /><div class="also"><${Key} label=${t('update.take')} onPress=${take} /></div>`;
}

/** @param {{row: any}} props */
function RefusedRow({ row }) {
  const heading = row.place ? placeTitle(row.place) : t(`heading.${row.entry?.heading}`);
  const what = row.entry
    ? t('refused.of', { heading, when: when(row.entry.made) })
    : t('heading.photo');
  return html`<li><${Row} href=${`/refused/${row.id}`} icon="i-caution" name=${what} says=${row.says} /></li>`;
}

/** @param {any} store */
function useSending(store) {
  const { state } = store;
  const send = async () => {
    const before = Number(state.lastContact.peek() ?? 0);
    await store.syncNow();
    const reached = Number(state.lastContact.peek() ?? 0) > before;
    const words = reached ? '' : t('sync.offline', { n: Number(state.waiting.peek()) });
    say(words || capital(t('sync.mark.home.spoken')));
  };
  const save = async () => {
    const name = `witnessmark-${new Date().toISOString().slice(0, 10)}.zip`;
    await saveFile(await store.saveToFile(), name);
    say(t('sync.file.saved'));
  };
  return { send, save };
}

/** @param {{store: any, known: {ready: Record<string, boolean>, refused: any[]}}} props */
function Known({ store, known }) {
  const { send, save } = useSending(store);
  const { state } = store;
  return html`<div class="left"><${Title} /><${Apart} state=${state} /><${Contact} state=${state} /><${Ready} first=${known.ready} /><${Counts} /><${Main} state=${state} onSend=${send} /></div>
    <div class="right"><${Refused} rows=${known.refused} /><div class="also"><${Newer} /><${Notices} /></div>
    <div class="also stack"><${Key} icon="i-device" href="/devices" label=${t('sync.devices')} /><${Key} icon="i-file" label=${t('sync.file')} onPress=${save} /><p class="aside">${t('sync.file.says')}</p></div></div>`;
}

const Title = () => html`<section class="hello"><h1 tabindex="-1">${t('sync')}</h1></section>`;

/** @param {any} store */
async function lookUp(store) {
  const [ready, refused] = await Promise.all([store.ready(), refusedRows(store)]);
  return { ready, refused };
}

/** @param {{store: any}} props */
export function screen({ store }) {
  const { value } = useAnswer(() => lookUp(store), []);
  const back = { to: '/more', says: t('more') };
  return html`<${Page} title=${t('sync')} now="more" back=${back} ready=${Boolean(value)}>
    ${value ? html`<${Known} store=${store} known=${value} />` : html`<div class="left"><${Title} /><${Wait} /></div>`}</${Page}>`;
}
